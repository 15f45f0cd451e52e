import { randomBytes } from "node:crypto";
import { hostname, networkInterfaces } from "node:os";
import * as z from "zod";
import { Refusal } from "./refusal.mjs";

const port = z
  .string()
  .regex(/^[1-9][0-9]{0,4}$/)
  .transform(Number)
  .refine((number) => number <= 65_535);

const variables = z.object({
  OPEN: z.enum(["network"], { error: "may only be network" }).nullable().default(null),
  NETWORK_PORT: port.nullable().default(null),
  PUBLIC_ADDRESS: z
    .string()
    .regex(/^https:\/\/[a-z0-9.-]+(:[1-9][0-9]{0,4})?$/, {
      error: "must look like https://prices.example.org, in small letters and without a path",
    })
    .nullable()
    .default(null),
});

/**
 * How the person opens the program: { mode: null | "network" | "proxy", port, origins }.
 * `npm start -- --network` or OPEN=network: our own front with TLS. PUBLIC_ADDRESS: a proxy of their own, which calls us here.
 * @param {{ port: number }} settings
 * @param {Readonly<Record<string, string | undefined>>} given
 * @param {readonly string[]} args
 * @throws {Refusal} naming each variable that is wrong
 */
export function openness({ port: own }, given = process.env, args = process.argv) {
  const set = Object.entries(given).filter(([name, value]) => name in variables.shape && value !== "");
  const read = variables.safeParse(Object.fromEntries(set));
  if (!read.success) {
    const said = ({ path, message }) =>
      path[0] === "NETWORK_PORT"
        ? "NETWORK_PORT must be a port number from 1 to 65535."
        : `${path.join(".")} ${message}.`;
    throw new Refusal([...new Set(read.error.issues.map(said))].join("\n"));
  }
  const { OPEN, NETWORK_PORT, PUBLIC_ADDRESS } = read.data;
  if (PUBLIC_ADDRESS !== null) return { mode: "proxy", port: null, origins: [PUBLIC_ADDRESS] };
  if (OPEN === null && !args.includes("--network")) return { mode: null, port: null, origins: [] };
  const network = NETWORK_PORT ?? (own < 65_000 ? own + 443 : own - 443);
  return { mode: "network", port: network, origins: addressesHere().map((name) => originOf(name, network)) };
}

const originOf = (name, port) => `https://${name.includes(":") ? `[${name}]` : name}:${port}`;

/** The addresses and names of this computer in its networks, the likeliest first; never only the loopback ones. */
export function addressesHere(interfaces = networkInterfaces(), name = hostname()) {
  const outside = Object.values(interfaces).flatMap((list) => (list ?? []).filter((one) => !one.internal));
  const numbers = outside
    .filter(({ family, address }) => family === "IPv4" || !/^fe80/i.test(address)) // link-local needs a zone
    .sort((one, other) => one.family.localeCompare(other.family))
    .map(({ address }) => address.toLowerCase());
  const plain = name.toLowerCase();
  const names = /^[a-z0-9-]+(\.[a-z0-9-]+)*$/.test(plain)
    ? [plain.includes(".") ? plain : `${plain}.local`]
    : [];
  return [...new Set([...numbers, ...names, "localhost", "127.0.0.1"])];
}

/** What the pages are told of it. The front's secret is made anew at each start and known to these two processes alone. */
export function opennessVariables({ mode, origins }, authority) {
  if (mode === null) return {};
  return {
    DUNNAGE_OPEN: mode,
    DUNNAGE_ORIGINS: origins.join(" "),
    ...(mode === "network" ? { DUNNAGE_FRONT_SECRET: randomBytes(32).toString("hex") } : {}),
    ...(authority
      ? { DUNNAGE_AUTHORITY: authority.certificate, DUNNAGE_AUTHORITY_FINGERPRINT: authority.fingerprint }
      : {}),
  };
}
