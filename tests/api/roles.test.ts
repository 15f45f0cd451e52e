import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { mayAsk, ROWS } from "../../app/_gate/access.ts";
import { ROLES, type Role } from "../../app/_gate/roles.ts";
import { askForSignIn } from "../../lib/data/sessions.ts";
import { shareSecret, signedInAs } from "../support/people-of-the-house.ts";
import { type Served, served } from "../support/served.ts";

// Every address of the table, asked over HTTP by everybody: who may not is turned away, whatever else is wrong with the request.
let web: Served;
const cookies: Partial<Record<Role, string>> = { here: "", demo: "dunnage-workspace=demo", nobody: "" };

beforeAll(async () => {
  shareSecret();
  web = await served();
  for (const role of ["owner", "crew", "reader"] as const) cookies[role] = await signedInAs(role);
});
afterAll(async () => {
  const { disconnectHouse } = await import("../../lib/data/house-client.ts");
  await disconnectHouse();
  await web.stop();
});

const ID = "0190f3c4-0000-7000-8000-000000000000";
const WORDS: Readonly<Record<string, string>> = {
  "[calculator]": "area",
  "[happened]": "draws",
  "[code]": "CA-NS",
};
const sample = (path: string) =>
  path.replaceAll(/\[(\.\.\.)?\w+\]/g, (part) => WORDS[part] ?? (part.startsWith("[...") ? "any/thing" : ID));

/** Turned away by the gate: the interface says so with 401 or 403, a screen sends to the door, or shows that it is not theirs. */
async function turnedAway(role: Role, method: string, path: string): Promise<boolean> {
  const response = await fetch(`${web.address}${path}`, {
    method,
    headers: { cookie: cookies[role] ?? "", "content-type": "application/json", origin: web.address },
    ...(method === "POST" ? { body: "{}" } : {}),
    redirect: "manual",
  });
  const text = await response.text();
  if (response.status === 401) return path.startsWith("/api/auth/") ? text.includes('"status":401') : true;
  if (response.status === 403) return true;
  const to = response.headers.get("location") ?? "";
  return (
    response.status === 303 &&
    (/\/sign-in(\?to=|\/not-yours$)/.test(to) || (path === "/" && to.endsWith("/savings")))
  );
}

async function expectTable(roles: readonly Role[], method: "GET" | "POST") {
  const wrong: string[] = [];
  for (const row of ROWS.filter((one) => one.path !== "/api/auth/sign-out")) {
    const path = sample(row.path);
    for (const role of roles) {
      const out = await turnedAway(role, method, path);
      if (out === mayAsk(role, method, path))
        wrong.push(`${role} ${method} ${path}: ${out ? "turned away" : "let in"}`);
    }
  }
  expect(wrong).toEqual([]);
}

describe("every address by every role", () => {
  const here = ROLES.filter((role) => role !== "demo" && role !== "nobody");
  const door = ROLES.filter((role) => role === "demo" || role === "nobody");
  test("reading, while this computer is not asked", () => expectTable(here, "GET"));
  test("writing, while this computer is not asked", () => expectTable(here, "POST"));
  test("reading, nobody signed in, once sign-in is asked for", async () => {
    await askForSignIn(true);
    await expectTable(door, "GET");
  });
  test("writing, nobody signed in, once sign-in is asked for", () => expectTable(door, "POST"));
});

test("what no row names is denied, to an owner too", async () => {
  for (const path of [
    "/there-is-nothing",
    "/api/auth/sign-up/email",
    "/api/auth/list-sessions",
    "/_next/image",
  ]) {
    const response = await fetch(`${web.address}${path}`, { headers: { cookie: cookies.owner ?? "" } });
    expect([path, response.status]).toEqual([path, 404]);
  }
});
