import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { houseClient } from "../../lib/data/house-client.ts";
import { invite, pairing } from "../../lib/data/one-time-codes.ts";
import { people } from "../../lib/data/people.ts";
import { askForSignIn, revokeSession, sessionsOf } from "../../lib/data/sessions.ts";
import { signInAddress } from "../../lib/data/sign-in-secret.ts";
import { firstCode } from "../../lib/launch/first-code.mjs";
import {
  forgetTries,
  PASSWORD,
  sessionCookie,
  shareSecret,
  signedInAs,
} from "../support/people-of-the-house.ts";
import { sentForm, sessionIn } from "../support/sent-form.ts";
import { type Served, served, servedOn } from "../support/served.ts";

let web: Served;
let url = "";

beforeAll(async () => {
  shareSecret();
  web = await served();
  url = process.env.DATABASE_URL ?? "";
  await askForSignIn(true);
});
beforeEach(forgetTries);
afterAll(async () => {
  const { disconnectHouse } = await import("../../lib/data/house-client.ts");
  await disconnectHouse();
  await web.stop();
});

const statusWith = async (cookie: string) =>
  (await fetch(`${web.address}/api/v1/workspace`, { headers: { cookie } })).status;
const role = process.env.DUNNAGE_ROLE ?? "dunnage_app";
const newcomer = (code: string, name: string) => ({ code, name, password: PASSWORD });

function knock(address: string, path: string, body: object, origin = address): Promise<Response> {
  return fetch(`${address}/api/auth${path}`, {
    method: "POST",
    headers: { "content-type": "application/json", origin },
    body: JSON.stringify(body),
  });
}
const wrong = (address: string, name = "Robin") =>
  knock(address, "/sign-in/email", { email: signInAddress(name), password: "not the right words" });

describe("the first owner", () => {
  test("is made by the code on the terminal, which works once", async () => {
    const code = (await firstCode(url, role)) ?? "";
    const short = await sentForm(web.address, "/sign-in/first", 'name="code"', {
      ...newcomer(code, "Robin"),
      password: "short",
    });
    expect(await short.text()).toContain("takes at least 12 characters");
    const made = await sentForm(web.address, "/sign-in/first", 'name="code"', newcomer(code, "Robin"));
    expect([made.status, made.headers.get("location")]).toEqual([303, "/sign-in/you"]);
    expect(await statusWith(sessionIn(made) ?? "")).toBe(200);
    const again = await sentForm(
      web.address,
      "/sign-in/first",
      'name="code"',
      newcomer(code, "Somebody else"),
    );
    expect(await again.text()).toContain("wrong, was used before, or is too old");
    expect((await people()).map(({ name, role }) => [name, role])).toEqual([["Robin", "owner"]]);
  });

  test("once there, no start makes another code; asked for, each start makes a new one and voids the last", async () => {
    expect(await firstCode(url, role)).toBeNull();
    const [one, two] = [await firstCode(url, role, true), await firstCode(url, role, true)];
    expect(one).not.toBe(two);
    const made = await sentForm(web.address, "/sign-in/first", 'name="code"', newcomer(one ?? "", "Earlier"));
    expect(sessionIn(made)).toBeNull();
  });

  test("stays: the last owner can be neither taken out nor made less", async () => {
    const { changeRole, removePerson } = await import("../../lib/data/people.ts");
    const [owner] = await people();
    const refused = { ok: false, why: "faults", faults: [{ path: "role", code: "last-owner" }] };
    expect(await removePerson(owner?.id ?? "")).toEqual(refused);
    expect(await changeRole(owner?.id ?? "", "crew")).toEqual(refused);
  });
});

describe("the door", () => {
  test("sign-up is closed, by every address of it", async () => {
    const body = { email: "new@people.invalid", password: PASSWORD, name: "New", role: "owner" };
    expect((await knock(web.address, "/sign-up/email", body)).status).toBe(401);
    const { houseAuth } = await import("../../lib/data/house-auth.ts");
    const past = new Request(`${web.address}/api/auth/sign-up/email`, {
      method: "POST",
      headers: { "content-type": "application/json", origin: web.address, "x-dunnage-client": "127.0.0.1" },
      body: JSON.stringify(body),
    });
    expect((await (await houseAuth(web.address)).handler(past)).status).toBe(400);
    expect((await people()).length).toBe(1);
  });

  test("a name and a password let in, whatever case the name is typed in; the wrong password does not", async () => {
    const fields = { name: " rOBIN ", password: PASSWORD };
    const entered = await sentForm(web.address, "/sign-in?to=/stock", 'name="password"', fields);
    expect([entered.status, entered.headers.get("location")]).toEqual([303, "/stock"]);
    expect(await statusWith(sessionIn(entered) ?? "")).toBe(200);
    const refused = await sentForm(web.address, "/sign-in", 'name="password"', {
      ...fields,
      password: "another one altogether",
    });
    const text = await refused.text();
    expect(text).toContain("do not belong together");
    expect(text).not.toContain("another one altogether");
    expect(sessionIn(refused)).toBeNull();
  });

  test("after signing in nobody is sent to another site", async () => {
    const fields = { name: "Robin", password: PASSWORD, to: "//evil.example" };
    const entered = await sentForm(web.address, "/sign-in", 'name="password"', fields);
    expect(entered.headers.get("location")).toBe("/");
  });

  test("a page of another origin cannot sign anybody in", async () => {
    const body = { email: signInAddress("Robin"), password: PASSWORD };
    expect((await knock(web.address, "/sign-in/email", body, "https://evil.example")).status).toBe(403);
  });

  test("wrong passwords are limited, a made-up address of the caller's changes nothing, and a restart forgives nothing", async () => {
    const codes: number[] = [];
    for (let tries = 0; tries < 11; tries += 1) codes.push((await wrong(web.address)).status);
    expect(codes).toEqual([...Array.from({ length: 10 }, () => 401), 429]);
    const forged = await fetch(`${web.address}/api/auth/sign-in/email`, {
      method: "POST",
      headers: {
        "content-type": "application/json",
        origin: web.address,
        "x-forwarded-for": "198.51.100.7",
        "x-dunnage-client": "198.51.100.7",
        "x-dunnage-front": "",
      },
      body: JSON.stringify({ email: signInAddress("Robin"), password: "not the right words" }),
    });
    expect(forged.status).toBe(429);
    await web.stop();
    web = await servedOn(url);
    expect((await wrong(web.address)).status).toBe(429);
  });

  test("wrong codes are limited too", async () => {
    const texts: string[] = [];
    for (let tries = 0; tries < 11; tries += 1) {
      const made = await sentForm(web.address, "/sign-in/pair", 'name="code"', { code: "0000-0000-0000" });
      texts.push(await made.text());
    }
    expect(texts[9]).toContain("wrong, was used before");
    expect(texts[10]).toContain("too many tries");
  });
});

describe("sessions", () => {
  test("a stolen cookie is refused once its session is revoked; so is one signed by another secret", async () => {
    const cookie = await signedInAs("crew", "Kim");
    expect(await statusWith(cookie)).toBe(200);
    const [session] = (await sessionsOf(null)).filter(({ personName }) => personName === "Kim");
    expect(await revokeSession(session?.id ?? "", null)).toBe(true);
    expect(await statusWith(cookie)).toBe(401);
    expect(await statusWith(`dunnage.session_token=${"a".repeat(43)}.${"b".repeat(43)}%3D`)).toBe(401);
  });

  test("nobody but an owner ends another's", async () => {
    const [robin] = await people();
    const [session] = await sessionsOf(robin?.id ?? "");
    expect(await revokeSession(session?.id ?? "", "someone else's id")).toBe(false);
  });

  test("one that is over lets nobody in", async () => {
    const cookie = await signedInAs("crew", "Lee");
    await (await houseClient()).personSession.updateMany({
      where: { person: { name: "Lee" } },
      data: { expiresAt: new Date(Date.now() - 1000) },
    });
    expect(await statusWith(cookie)).toBe(401);
  });
});

describe("codes", () => {
  const pair = (code: string) => sentForm(web.address, "/sign-in/pair", 'name="code"', { code });
  const robinsCode = async () => pairing((await people()).find(({ name }) => name === "Robin")?.id ?? "");

  test("a phone is let in by a pairing code, once, however it is typed", async () => {
    const code = await robinsCode();
    const paired = await pair(` ${code.toLowerCase().replaceAll("-", " ")}`);
    expect(await statusWith(sessionIn(paired) ?? "")).toBe(200);
    const twice = await pair(code);
    expect([sessionIn(twice), (await twice.text()).includes("was used before")]).toEqual([null, true]);
  });

  test("two phones at the same moment: one is let in", async () => {
    const code = await robinsCode();
    const both = await Promise.all([pair(code), pair(code)]);
    expect(both.filter((one) => sessionIn(one) !== null).length).toBe(1);
  });

  test("after ten minutes it is void", async () => {
    const code = await robinsCode();
    const client = await houseClient();
    const [{ left } = { left: 0 }] = await client.$queryRaw<{ left: number }[]>`
      SELECT extract(epoch FROM expires_at - now())::float8 AS left FROM one_time_code ORDER BY created_at DESC LIMIT 1`;
    expect(Math.round(left / 60)).toBe(10);
    await client.oneTimeCode.updateMany({
      where: { usedAt: null },
      data: { expiresAt: new Date(Date.now() - 1) },
    });
    expect(sessionIn(await pair(code))).toBeNull();
  });

  test("one made for something else opens nothing", async () => {
    expect(sessionIn(await pair(await invite("owner")))).toBeNull();
  });

  test("an invitation makes somebody of the role it was made for, and of no other", async () => {
    const fields = { ...newcomer(await invite("reader"), "Sam"), role: "owner" };
    const joined = await sentForm(web.address, "/sign-in/join", 'name="code"', fields);
    expect((await people()).find(({ name }) => name === "Sam")?.role).toBe("reader");
    expect(await statusWith(sessionIn(joined) ?? "")).toBe(403);
  });

  test("a name that is taken is asked for anew, and the code stays good", async () => {
    const code = await invite("crew");
    const taken = await sentForm(web.address, "/sign-in/join", 'name="code"', newcomer(code, "sam"));
    expect(sessionIn(taken)).toBeNull();
    const joined = await sentForm(web.address, "/sign-in/join", 'name="code"', newcomer(code, "Sam Two"));
    expect(sessionIn(joined)).not.toBeNull();
  });
});

test("what a person does stands in the change log under their name", async () => {
  const cookie = await signedInAs("owner", "Alex");
  const store = { name: "Mill Road Yard", taxRegion: "CA-NS", currency: "CAD" };
  const made = await fetch(`${web.address}/api/v1/stores`, {
    method: "POST",
    headers: { cookie, "content-type": "application/json" },
    body: JSON.stringify(store),
  });
  expect(made.status).toBe(201);
  const log = await fetch(`${web.address}/settings/changes`, { headers: { cookie } });
  expect(await log.text()).toContain("Alex");
});

test("a token is kept nowhere but in the browser and its own table, and a code only by its hash", async () => {
  const code = await invite("crew");
  const [row] = await (await houseClient()).$queryRaw<{ text: string }[]>`
    SELECT string_agg(one_time_code::text, ' ') AS text FROM one_time_code`;
  expect(row?.text).not.toContain(code);
  expect(row?.text).not.toContain(code.replaceAll("-", ""));
  expect(sessionCookie("x")).toContain("x.");
});
