/** What the launcher tells of how the house is open: see lib/launch/openness.mjs. */
export type Openness = Readonly<{
  /** network: through our own front with TLS; proxy: behind one of the person's own; null: this computer alone. */
  mode: "network" | "proxy" | null;
  /** The addresses it is known by from outside, e.g. https://192.168.1.5:3443. */
  origins: readonly string[];
  /** What only our own front can say, so that nobody else passes for it. */
  frontSecret: string | null;
}>;

/** The way a request came in, as far as that can be known for sure. */
export type Whence = Readonly<{ origin: string; client: string; loopback: boolean }>;

type Asked = Pick<Headers, "get">;
const LOOPBACK = /^(localhost|127\.0\.0\.1|\[::1\])(:\d{1,5})?$/i;
const THIS_COMPUTER = "127.0.0.1";

/** The openness the launcher has put into the environment. */
export function opennessOf(given: Readonly<Record<string, string | undefined>>): Openness {
  const mode = given.DUNNAGE_OPEN;
  return {
    mode: mode === "network" || mode === "proxy" ? mode : null,
    origins: (given.DUNNAGE_ORIGINS ?? "").split(" ").filter((origin) => origin !== ""),
    frontSecret: given.DUNNAGE_FRONT_SECRET || null,
  };
}

// Every character is looked at, wherever the first difference stands.
function same(one: string, other: string): boolean {
  let difference = one.length ^ other.length;
  for (let at = 0; at < one.length; at += 1)
    difference |= one.charCodeAt(at) ^ other.charCodeAt(at % Math.max(other.length, 1));
  return difference === 0;
}

/**
 * Where a request comes from, or null when the name it calls is not one of ours. Only our own front can say that it passes
 * something on; what a client says of forwarding counts for nothing, except behind a proxy of the person's own, and then
 * nothing is taken for this computer's: such a proxy calls from it too.
 */
export function whence(headers: Asked, open: Openness): Whence | null {
  const host = headers.get("host") ?? "";
  if (open.mode === "network" && open.frontSecret !== null) {
    if (same(headers.get("x-dunnage-front") ?? "", open.frontSecret))
      return known(`https://${headers.get("x-dunnage-host")}`, open, headers.get("x-dunnage-client") ?? "");
  }
  if (open.mode === "proxy") {
    const outside = known(
      `https://${headers.get("x-forwarded-host") ?? host}`,
      open,
      headers.get("x-forwarded-for")?.split(",").at(-1)?.trim() ?? "",
    );
    if (outside !== null) return outside;
  }
  if (!LOOPBACK.test(host)) return null;
  return { origin: `http://${host}`, client: THIS_COMPUTER, loopback: open.mode !== "proxy" };
}

function known(origin: string, open: Openness, client: string): Whence | null {
  return open.origins.includes(origin.toLowerCase())
    ? { origin: origin.toLowerCase(), client: client === "" ? "unknown" : client, loopback: false }
    : null;
}
