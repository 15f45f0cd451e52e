import { describe, expect, test } from "vitest";
import { turnedAway } from "../../../app/_gate/turned-away.ts";
import { opennessOf, whence } from "../../../app/_gate/whence.ts";
import { wayBack } from "../../../app/sign-in/way-back.ts";

const closed = opennessOf({});
const network = opennessOf({
  DUNNAGE_OPEN: "network",
  DUNNAGE_ORIGINS: "https://192.168.1.5:3443 https://house.local:3443",
  DUNNAGE_FRONT_SECRET: "front",
});
const proxied = opennessOf({ DUNNAGE_OPEN: "proxy", DUNNAGE_ORIGINS: "https://prices.example.org" });
const from = (headers: Record<string, string>, open = closed) => whence(new Headers(headers), open);

describe("where a request comes from", () => {
  test("closed: this computer's names, and no other", () => {
    expect(from({ host: "127.0.0.1:3000" })).toEqual({
      origin: "http://127.0.0.1:3000",
      client: "127.0.0.1",
      loopback: true,
    });
    expect(from({ host: "192.168.1.5:3000" })).toBeNull();
    expect(from({ host: "evil.example", "x-forwarded-host": "localhost" })).toBeNull();
  });

  test("open to the network: only the front can say who called, by the secret it alone knows", () => {
    const said = {
      host: "localhost:3000",
      "x-dunnage-host": "192.168.1.5:3443",
      "x-dunnage-client": "192.168.1.9",
    };
    expect(from({ ...said, "x-dunnage-front": "front" }, network)).toEqual({
      origin: "https://192.168.1.5:3443",
      client: "192.168.1.9",
      loopback: false,
    });
    for (const guess of ["", "fron", "fronts", "FRONT"])
      expect(from({ ...said, "x-dunnage-front": guess }, network)).toMatchObject({ client: "127.0.0.1" });
    expect(
      from({ ...said, "x-dunnage-host": "evil.example", "x-dunnage-front": "front" }, network),
    ).toBeNull();
  });

  test("behind a proxy nothing is taken for this computer's, since the proxy calls from it too", () => {
    expect(from({ host: "localhost:3000" }, proxied)?.loopback).toBe(false);
    const passed = { host: "localhost:3000", "x-forwarded-host": "prices.example.org" };
    expect(from({ ...passed, "x-forwarded-for": "203.0.113.1, 198.51.100.2" }, proxied)).toEqual({
      origin: "https://prices.example.org",
      client: "198.51.100.2",
      loopback: false,
    });
    expect(from({ host: "evil.example" }, proxied)).toBeNull();
  });
});

test("a page of plain HTTP at a secured address's name is of another origin", () => {
  const come = from({ host: "prices.example.org" }, proxied);
  const headers = new Headers({ origin: "http://prices.example.org" });
  expect(turnedAway({ method: "POST", path: "/", headers }, come)).toMatch(/another origin/);
});

test("after signing in only paths of ours are gone to", () => {
  for (const to of [
    "//evil.example",
    "https://evil.example",
    "/\\evil.example",
    "javascript:x",
    "/api/v1/x",
    undefined,
  ])
    expect([to, wayBack(to)]).toEqual([to, "/"]);
  expect(wayBack("/stock/0190f3c4")).toBe("/stock/0190f3c4");
});
