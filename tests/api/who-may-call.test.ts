import { describe, expect, test } from "vitest";
import * as z from "zod";
import { storeShape } from "../../lib/show/api-store.ts";
import { ownInterface } from "../support/interface.ts";
import { rawRequest } from "../support/raw-request.ts";

const api = ownInterface();
const port = () => Number(new URL(api.address()).port);
const own = () => `127.0.0.1:${port()}`;
const STORE = JSON.stringify({ name: "Planted from elsewhere", taxRegion: "CA-NS", currency: "CAD" });
const JSON_TYPE = { "content-type": "application/json" };

async function stores(): Promise<string[]> {
  const { items } = await api.read(z.object({ items: z.array(storeShape) }), "/stores");
  return items.map(({ name }) => name);
}

describe("only this machine may call", () => {
  test("a name that only points here is refused for the interface, the screens and their files", async () => {
    for (const host of [
      "evil.example",
      `evil.example:${port()}`,
      "127.0.0.1.evil.example",
      "localhost.evil.example",
    ]) {
      for (const path of ["/api/v1/workspace", "/", "/settings", "/favicon.ico", "/api/v1/nothing"]) {
        const { status } = await rawRequest(port(), "GET", path, { host });
        expect([host, path, status]).toEqual([host, path, 403]);
      }
    }
  });

  test("the interface refuses with a problem, a screen with a sentence", async () => {
    const problem = await rawRequest(port(), "GET", "/api/v1/workspace", { host: "evil.example" });
    expect(problem.type).toBe("application/problem+json");
    expect(JSON.parse(problem.text)).toMatchObject({ status: 403, title: "Forbidden", errors: [] });
    const screen = await rawRequest(port(), "GET", "/", { host: "evil.example" });
    expect([screen.type, screen.text]).toEqual([
      "text/plain; charset=utf-8",
      "Only this machine may call: name it localhost or 127.0.0.1.",
    ]);
  });

  test("each of its own names is let in", async () => {
    for (const host of [own(), `localhost:${port()}`, "LOCALHOST", `[::1]:${port()}`]) {
      const { status } = await rawRequest(port(), "GET", "/api/v1/workspace", { host });
      expect([host, status]).toEqual([host, 200]);
    }
  });

  test("a forwarded name does not stand in for the one that was called", async () => {
    const headers = { host: "evil.example", "x-forwarded-host": own(), "x-forwarded-for": "127.0.0.1" };
    expect((await rawRequest(port(), "GET", "/api/v1/workspace", headers)).status).toBe(403);
  });
});

describe("a page elsewhere may not reach in", () => {
  const across: readonly Readonly<Record<string, string>>[] = [
    { origin: "https://evil.example" },
    { origin: "null" },
    { origin: "http://127.0.0.1:1" },
    { "sec-fetch-site": "cross-site" },
    { "sec-fetch-site": "same-site" },
  ];

  test("it cannot write, not even without a preflight", async () => {
    for (const headers of across) {
      for (const type of [JSON_TYPE, { "content-type": "text/plain" }]) {
        const sent = { host: own(), ...type, ...headers };
        const { status } = await rawRequest(port(), "POST", "/api/v1/stores", sent, STORE);
        expect([headers, status]).toEqual([headers, 403]);
      }
      const screen = await rawRequest(port(), "POST", "/settings", { host: own(), ...headers }, "a=b");
      expect([headers, screen.status]).toEqual([headers, 403]);
    }
    expect(await stores()).not.toContain("Planted from elsewhere");
  });

  test("it cannot read figures, and gets no leave to ask", async () => {
    for (const headers of across) {
      const { status } = await rawRequest(port(), "GET", "/api/v1/savings", { host: own(), ...headers });
      expect([headers, status]).toEqual([headers, 403]);
    }
    const preflight = {
      host: own(),
      origin: "https://evil.example",
      "access-control-request-method": "POST",
    };
    expect((await rawRequest(port(), "OPTIONS", "/api/v1/stores", preflight)).status).toBe(403);
  });

  test("a link from elsewhere still opens a screen", async () => {
    const followed = { host: own(), "sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate" };
    expect((await rawRequest(port(), "GET", "/settings", followed)).status).toBe(200);
  });

  test("a page of its own may write", async () => {
    const headers = { host: own(), origin: `http://${own()}`, "sec-fetch-site": "same-origin", ...JSON_TYPE };
    const body = JSON.stringify({ name: "Entered here", taxRegion: "CA-NS", currency: "CAD" });
    expect((await rawRequest(port(), "POST", "/api/v1/stores", headers, body)).status).toBe(201);
    expect(await stores()).toContain("Entered here");
  });
});
