import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { networkCertificate } from "../../lib/launch/authority.mjs";
import { freePort } from "../../lib/launch/free-port.mjs";
import { type Launched, launched } from "../support/launched.ts";
import { sentForm, sessionIn } from "../support/sent-form.ts";

const PASSWORD = "four unrelated words here";
let dataDir = "";
let port = 0;
let program: Launched;
let code = "";

beforeAll(async () => {
  dataDir = join(mkdtempSync(join(tmpdir(), "dunnage-network-")), "data");
  port = await freePort();
  program = await launched({ DATA_DIR: dataDir, NETWORK_PORT: String(port) }, "--network");
  await program.says("Stop it with Ctrl-C.");
  code = /^ {4}([0-9A-Z-]{14})$/m.exec(program.said())?.[1] ?? "";
});
afterAll(async () => {
  program.interrupt();
  await program.ended;
  rmSync(join(dataDir, ".."), { recursive: true, force: true });
});

const authority = () => readFileSync(join(dataDir, "network/authority.pem"), "utf8");
const outside = () => `https://localhost:${port}`;
type Sent = Readonly<Record<string, string>>;

/** fetch over TLS with the house's authority trusted, as a phone that has taken its certificate. */
const trusting: typeof fetch = async (input, init = {}) => {
  const asked = new Request(input, init);
  const body = Buffer.from(await asked.arrayBuffer());
  const headers = { ...Object.fromEntries(asked.headers), ...(init.headers as Sent) };
  const { hostname, pathname, search } = new URL(asked.url);
  return new Promise((resolve, reject) => {
    const options = {
      host: hostname,
      port,
      path: pathname + search,
      method: asked.method,
      headers,
      ca: authority(),
      servername: hostname, // not what the Host header says
    };
    const sent = request(options, (answer) => {
      const pieces: Buffer[] = [];
      answer.on("data", (piece: Buffer) => pieces.push(piece));
      answer.on("end", () => {
        const received = new Headers();
        for (let at = 0; at < answer.rawHeaders.length; at += 2)
          received.append(answer.rawHeaders[at] ?? "", answer.rawHeaders[at + 1] ?? "");
        resolve(
          new Response(pieces.length > 0 ? Buffer.concat(pieces) : null, {
            status: answer.statusCode ?? 0,
            headers: received,
          }),
        );
      });
    });
    sent.on("error", reject);
    sent.end(body);
  });
};

describe("npm start -- --network", () => {
  test("says where it is open, draws the square, and shows the fingerprint of what to trust", () => {
    expect(program.said()).toContain("Open to your network; everybody signs in, here too:");
    expect(program.said()).toContain(`  ${outside()}`);
    expect(program.said()).toMatch(/[█▀▄]{10}/);
    expect(program.said()).toMatch(/Its fingerprint: ([0-9A-F]{2}:){31}[0-9A-F]{2}/);
    expect(code).not.toBe("");
  });

  test("keeps the private keys and the secret for their owner alone", () => {
    for (const path of ["network/authority-key.pem", "network/server-key.pem", "sign-in-secret"])
      expect([path, (statSync(join(dataDir, path)).mode & 0o777).toString(8)]).toEqual([path, "600"]);
  });

  test("speaks TLS with a certificate of its own authority, trusted only by who took that", async () => {
    await expect(fetch(outside())).rejects.toThrow();
    const answer = await trusting(`${outside()}/sign-in`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("strict-transport-security")).toBe("max-age=2592000");
  });

  test("plain HTTP on the same port gets the certificate to trust, and nothing else", async () => {
    const page = await fetch(`http://localhost:${port}/api/v1/workspace`);
    expect(await page.text()).toContain("Trust this house");
    const certificate = await fetch(`http://localhost:${port}/authority.crt`);
    expect(certificate.headers.get("content-type")).toBe("application/x-x509-ca-cert");
    expect(await certificate.text()).toBe(authority());
    expect((await fetch(`http://localhost:${port}/`, { method: "POST" })).status).toBe(405);
  });

  test("nothing leaves without sign-in, here neither", async () => {
    for (const ask of [
      () => trusting(`${outside()}/api/v1/workspace`),
      () => fetch(`${program.address}/api/v1/workspace`),
    ])
      expect((await ask()).status).toBe(401);
    const page = await trusting(`${outside()}/stock`, { redirect: "manual" });
    expect(page.status).toBe(303);
    expect(page.headers.get("location")).toMatch(/\/sign-in\?to=%2Fstock$/);
  });

  test("what a client says of forwarding counts for nothing, on either side", async () => {
    const forged = {
      host: `evil.example:${port}`,
      "x-forwarded-host": `localhost:${port}`,
      "x-dunnage-host": `localhost:${port}`,
      "x-dunnage-front": "guess",
    };
    expect((await trusting(`${outside()}/sign-in`, { headers: forged })).status).toBe(403);
    const past = await fetch(`${program.address}/sign-in`, {
      headers: { "x-dunnage-front": "guess", "x-dunnage-host": "evil.example", "x-forwarded-proto": "https" },
    });
    expect(past.headers.get("strict-transport-security")).toBeNull();
  });

  test("a page of another origin may not call over the network either", async () => {
    for (const headers of [{ origin: "https://evil.example" }, { origin: program.address }])
      expect((await trusting(`${outside()}/sign-in`, { method: "POST", headers, body: "x" })).status).toBe(
        403,
      );
  });

  test("the first owner is made from a phone with the code on the terminal, with a cookie for TLS alone", async () => {
    const fields = { code, name: "Robin", password: PASSWORD };
    const made = await sentForm(outside(), "/sign-in/first", 'name="code"', fields, "", trusting);
    expect(made.status).toBe(303);
    expect(made.headers.getSetCookie().join()).toMatch(/Secure/i);
    expect(made.headers.getSetCookie().join()).toMatch(/HttpOnly/i);
    const headers = { cookie: sessionIn(made) ?? "" };
    const workspace = await trusting(`${outside()}/api/v1/workspace`, { headers });
    expect(workspace.status).toBe(200);
  });

  test("no secret is in a log: the code stands on its line of the terminal and nowhere else", () => {
    const secret = readFileSync(join(dataDir, "sign-in-secret"), "utf8").trim();
    const log = readFileSync(join(dataDir, "postgres.log"), "utf8");
    for (const hidden of [code, code.replaceAll("-", ""), secret, PASSWORD])
      expect(log).not.toContain(hidden);
    expect(program.said().split(code).length).toBe(2);
    for (const hidden of [secret, PASSWORD, "PRIVATE KEY"]) expect(program.said()).not.toContain(hidden);
    const kept = readdirSync(dataDir).filter((name) => statSync(join(dataDir, name)).isFile());
    for (const name of kept) expect(readFileSync(join(dataDir, name), "utf8")).not.toContain(code);
  });
});

describe("the certificate", () => {
  test("is kept while the addresses stay, and made anew by the same authority when one is added", async () => {
    const folder = mkdtempSync(join(tmpdir(), "dunnage-certificate-"));
    try {
      const first = await networkCertificate(folder, ["192.0.2.7", "house.local"]);
      const same = await networkCertificate(folder, ["192.0.2.7", "house.local"]);
      expect(same.certificate).toBe(first.certificate);
      const moved = await networkCertificate(folder, ["192.0.2.8", "house.local"]);
      expect(moved.certificate).not.toBe(first.certificate);
      expect(moved.authority).toEqual(first.authority);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
