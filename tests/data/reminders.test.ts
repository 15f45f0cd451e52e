import { v7 } from "uuid";
import { describe, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { changeMaterial } from "../../lib/data/materials.ts";
import { addObservation, deleteObservation } from "../../lib/data/observations.ts";
import { remindersOf } from "../../lib/data/reminder-facts.ts";
import { feedMadeAt, makeFeed, revokeFeed, workspaceOfFeed } from "../../lib/data/reminder-feed.ts";
import { markReminder, reminderMarks, undoReminderMark } from "../../lib/data/reminder-marks.ts";
import {
  changeReminderSetting,
  reminderWishes,
  tellAtOrBelow,
  wantedPrice,
} from "../../lib/data/reminder-wishes.ts";
import { decimal } from "../../lib/decimal.ts";
import { materialPatch } from "../../lib/materials/material-entry.ts";
import { standing } from "../../lib/reminders/marks.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  otherScope,
  ownerScope,
  someObservationEntry,
  storedJob,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const mine = await ownerScope();
const theirs = { ...(await otherScope()), today: mine.today };
const { today } = mine;

const KEY = `return-by.${v7()}.${today}`;
const done = { key: KEY, kind: "done", until: null } as const;
const snoozed = (until: LocalDate) => ({ key: KEY, kind: "snoozed", until }) as const;
const marks = async (scope = mine) => (await reminderMarks(scope)).map(({ kind, until }) => [kind, until]);
const told = async (materialId: string, scope = mine) =>
  (await remindersOf(scope, today)).all
    .filter((one) => one.materialId === materialId && one.kind === "price-at-or-below")
    .map(({ each }) => each?.amount.toFixed());

describe("the price to be told at", () => {
  test("is kept for its material, changed, and taken away; the answer is what it was", async () => {
    const { material } = await storedJob(mine);
    const set = async (amount: string | null) =>
      (
        await accepted(tellAtOrBelow(mine, material.id, { amount: amount === null ? null : decimal(amount) }))
      ).before?.amount.toFixed() ?? null;
    expect([await set("40.5"), await set("39"), await set(null), await set(null)]).toEqual([
      null,
      "40.5",
      "39",
      null,
    ]);
    expect(await wantedPrice(mine, material.id)).toBeNull();
    const changes = (await changesOf(mine)).items.filter(({ noun }) => noun === "wanted_price");
    expect(changes.map(({ action }) => action)).toEqual(["removed", "changed", "created"]);
  });

  test("is not there for a material of another workspace", async () => {
    const { material } = await storedJob(mine);
    const written = await tellAtOrBelow(theirs, material.id, { amount: decimal("1") });
    expect(written).toMatchObject({ ok: false, why: "not-there" });
  });

  test("counts at once with each new price, and no longer once that is taken back", async () => {
    const { material, store } = await storedJob(mine);
    await accepted(tellAtOrBelow(mine, material.id, { amount: decimal("45") }));
    expect(await told(material.id)).toEqual([]);
    const seen = await accepted(
      addObservation(mine, v7(), someObservationEntry(material.id, store.id, today, { amount: "39.00" })),
    );
    // By hand: 39.00 and 14 % HST.
    expect(await told(material.id)).toEqual(["44.46"]);
    await accepted(deleteObservation(mine, seen.id));
    expect(await told(material.id)).toEqual([]);
  });
});

describe("what was done with a reminder", () => {
  test("is kept once, its newest in place of the one before, and undone and done again", async () => {
    const [first, second] = [v7(), v7()];
    await accepted(markReminder(mine, first, snoozed(plusDays(today, 3))));
    expect(await markReminder(mine, first, snoozed(plusDays(today, 3)))).toMatchObject({ repeated: true });
    expect(await markReminder(mine, first, done)).toMatchObject({ ok: false, why: "conflict" });
    await accepted(markReminder(mine, second, done));
    expect(await marks()).toEqual([["done", null]]);
    await accepted(undoReminderMark(mine, second, true));
    expect(await marks()).toEqual([]);
    await accepted(undoReminderMark(mine, first, false));
    expect(await marks()).toEqual([["snoozed", plusDays(today, 3)]]);
    expect(await undoReminderMark(mine, v7(), true)).toMatchObject({ ok: false, why: "not-there" });
  });

  test("pressed twice at once is one mark", async () => {
    await Promise.all([1, 2, 3, 4].map(() => accepted(markReminder(mine, v7(), done))));
    expect(await marks()).toEqual([["done", null]]);
  });

  test("stays in its workspace, and has its line in the change log", async () => {
    expect(await marks(theirs)).toEqual([]);
    const { items } = await changesOf(mine);
    expect(items.filter(({ noun }) => noun === "reminder_mark").length).toBeGreaterThan(4);
  });
});

test("a lot's shelf life is told of from the stored facts, and stays away once it is done", async () => {
  const { material, lot } = await storedStock(mine, plusDays(today, -20));
  await accepted(changeMaterial(mine, material.id, materialPatch.parse({ shelfLifeDays: 30 })));
  const now = async () => {
    const { all, marks: made } = await remindersOf(mine, today);
    return standing(all, made, today).filter(({ lotId }) => lotId === lot.id);
  };
  const [reminder] = await now();
  expect([reminder?.kind, reminder?.on]).toEqual(["keeps-until", plusDays(today, 10)]);
  await accepted(markReminder(mine, v7(), { key: reminder?.key ?? "", kind: "done", until: null }));
  expect(await now()).toEqual([]);
});

test("how long before an offer lapses is three days until the workspace says otherwise", async () => {
  expect((await reminderWishes(mine)).lapseDays).toBe(3);
  await accepted(changeReminderSetting(mine, { lapseDays: 5 }));
  await accepted(changeReminderSetting(mine, { lapseDays: 8 }));
  expect([(await reminderWishes(mine)).lapseDays, (await reminderWishes(theirs)).lapseDays]).toEqual([8, 3]);
});

describe("the calendar's address", () => {
  test("opens the calendar of its workspace; a new one, or none, voids it", async () => {
    const first = await makeFeed(mine);
    const other = await makeFeed(theirs);
    expect((await workspaceOfFeed(first))?.id).toBe(mine.workspaceId);
    expect((await workspaceOfFeed(other))?.id).toBe(theirs.workspaceId);
    const second = await makeFeed(mine);
    expect(await workspaceOfFeed(first)).toBeNull();
    expect((await workspaceOfFeed(second))?.id).toBe(mine.workspaceId);
    expect(await feedMadeAt(mine)).not.toBeNull();
    await revokeFeed(mine);
    expect(await workspaceOfFeed(second)).toBeNull();
    expect(await feedMadeAt(mine)).toBeNull();
    expect((await workspaceOfFeed(other))?.id).toBe(theirs.workspaceId);
  });

  test("has 43 letters of chance, and is stored nowhere", async () => {
    const token = await makeFeed(mine);
    expect(token).toMatch(/^[\w-]{43}$/);
    const { items } = await changesOf(mine);
    expect(items.some(({ noun }) => noun === "reminder_setting")).toBe(true);
    expect(JSON.stringify(items)).not.toContain(token);
  });

  test("that nobody made opens nothing", async () => {
    for (const token of ["", "x", "A".repeat(43), "' OR true --", `${await makeFeed(mine)}A`])
      expect(await workspaceOfFeed(token)).toBeNull();
  });
});
