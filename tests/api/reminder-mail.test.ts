import { afterAll, beforeAll, expect, test } from "vitest";
import { type MailBox, mailBox } from "../support/mail-box.ts";
import { type Served, served } from "../support/served.ts";

// The built program, asked as the launcher asks it once an hour.
let web: Served;
let box: MailBox;
const WORD = "the launcher's word";

beforeAll(async () => {
  box = await mailBox();
  Object.assign(process.env, { SMTP_URL: box.url, MAIL_TO: "us@example.org", DUNNAGE_DAILY_SECRET: WORD });
  web = await served();
});
afterAll(async () => {
  for (const name of ["SMTP_URL", "MAIL_TO", "DUNNAGE_DAILY_SECRET"]) delete process.env[name];
  await web.stop();
  await box.close();
});

async function asked(word: string | null): Promise<string> {
  const headers: Record<string, string> = word === null ? {} : { "x-dunnage-daily": word };
  const response = await fetch(`${web.address}/calendar/daily`, { method: "POST", headers });
  return `${response.status} ${await response.text()}`;
}

test("who does not bring the launcher's word finds nothing", async () => {
  expect([await asked(null), await asked(""), await asked("another")]).toEqual(
    Array(3).fill("404 Not there."),
  );
});

test("the mail goes out over the built program, once, in its words", async () => {
  // In a zone where it is past six all through this test, whatever the hour.
  const hour = new Date().getUTCHours();
  const timeZone = hour >= 7 && hour < 23 ? "UTC" : "Pacific/Auckland";
  const patched = await fetch(`${web.address}/api/v1/workspace`, {
    method: "PATCH",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ timeZone }),
  });
  expect(patched.status).toBe(200);
  expect(await asked(WORD)).toBe('200 {"mail":"nothing-new"}');
  const post = async (path: string, body: object) => {
    const response = await fetch(`${web.address}/api/v1/${path}`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    expect(`${path} ${response.status}`).toBe(`${path} 201`);
    return String(((await response.json()) as { id: unknown }).id);
  };
  const materialId = await post("materials", { name: "Studs", category: "other", purchaseUnit: "piece" });
  const project = await post("projects", { name: "Heron Lane", status: "live" });
  const neededBy = new Date().toISOString().slice(0, 10);
  await post(`projects/${project}/requirements`, { materialId, quantity: "12", unit: "piece", neededBy });
  expect(await asked(WORD)).toBe('200 {"mail":"sent"}');
  expect(await asked(WORD)).toBe('200 {"mail":"nothing-new"}');
  expect(box.letters).toHaveLength(1);
  expect(box.letters[0]).toContain("Subject: One thing to be reminded of, ");
  expect(box.letters[0]).toContain("- Studs: buy 12 pieces for Heron Lane by ");
});
