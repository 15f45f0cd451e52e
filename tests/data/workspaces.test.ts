import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { aboutDatabase, inWorkspace } from "../../lib/data/client.ts";
import { addLot } from "../../lib/data/lots.ts";
import { materialsOf } from "../../lib/data/materials.ts";
import { addObservation, correctObservation } from "../../lib/data/observations.ts";
import { addRequirement } from "../../lib/data/requirements.ts";
import { confirmTax } from "../../lib/data/tax-regions.ts";
import {
  demoWorkspace,
  discardWorkspace,
  makeDemoWorkspace,
  ownerWorkspace,
  todayOf,
  updateWorkspace,
  workspaceOf,
} from "../../lib/data/workspaces.ts";
import { decimal } from "../../lib/decimal.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { workspaceEntry } from "../../lib/tax/workspace-entry.ts";
import { loadDemo } from "../../prisma/demo/load.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someLotEntry,
  someObservationEntry,
  someRequirementEntry,
  storedJob,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;

test("the owner's workspace is made once, at the first call, in Canadian dollars and Nova Scotia", async () => {
  await freshDatabase();
  const made = await Promise.all(Array.from({ length: 5 }, () => ownerWorkspace()));
  expect(new Set(made.map(({ id }) => id)).size).toBe(1);
  expect(made[0]).toMatchObject({
    kind: "owner",
    homeCurrency: "CAD",
    taxRegion: "CA-NS",
    registrations: [],
    moneyRates: [],
    recheckDays: 30,
    rateSources: {},
  });
});

test("settings come back as entered, and what is not named stays", async () => {
  const { id } = await ownerWorkspace();
  const own = { workspaceId: id, actor: "owner" };
  const patch = workspaceEntry.parse({
    name: "Shed",
    homeCurrency: "USD",
    taxRegion: "CA-QC",
    registeredFor: ["GST", { tax: "QST", from: "2024-01-01", until: "2025-12-31" }],
    recheckDays: 21,
    timeZone: "America/St_Johns",
    rateSources: { CAD: "a bank" },
  });
  await accepted(updateWorkspace(own, patch));
  const now = await accepted(updateWorkspace(own, workspaceEntry.parse({ name: "Yard" })));
  expect(now).toMatchObject({
    name: "Yard",
    homeCurrency: "USD",
    taxRegion: "CA-QC",
    registrations: [
      { tax: "GST", from: null, until: null },
      { tax: "QST", from: "2024-01-01", until: "2025-12-31" },
    ],
    recheckDays: 21,
    timeZone: "America/St_Johns",
    rateSources: { CAD: "a bank" },
  });
  expect(await workspaceOf(own)).toEqual(now);
});

test("a region that is not known is refused, and nothing of the patch is kept", async () => {
  const { id, name } = await ownerWorkspace();
  const patch = workspaceEntry.parse({ name: "Other", taxRegion: "ZZ-9" });
  expect(await faultsIn(updateWorkspace({ workspaceId: id, actor: "owner" }, patch))).toEqual([
    "taxRegion: unknown-region",
  ]);
  expect((await ownerWorkspace()).name).toBe(name);
});

test("the first money rate holds from the beginning, the next from its day, and all can be taken away", async () => {
  const own = { workspaceId: (await ownerWorkspace()).id, actor: "owner" };
  const set = (moneyRate: unknown) => accepted(updateWorkspace(own, workspaceEntry.parse({ moneyRate })));
  await set("7");
  const day = todayOf(await ownerWorkspace());
  await set("8.25");
  const from = plusDays(day, -100);
  const now = await set({ percent: "6", from });
  expect(now.moneyRates).toEqual([
    { percent: decimal("7"), from: null },
    { percent: decimal("6"), from },
    { percent: decimal("8.25"), from: day },
  ]);
  expect((await set({ percent: "9", from })).moneyRates[1]?.percent).toEqual(decimal("9"));
  expect((await set(null)).moneyRates).toEqual([]);
});

const ROWS = `SELECT c.table_name AS name FROM information_schema.columns c
  WHERE c.table_schema = current_schema() AND c.column_name = 'workspace_id' ORDER BY 1`;

/** Rows of a workspace in every table, as one who is above the policies counts them. */
async function rowsOf(workspaceId: string): Promise<Record<string, number>> {
  return aboutDatabase(async (client) => {
    const tables = await client.$queryRawUnsafe<{ name: string }[]>(ROWS);
    const counts: Record<string, number> = {};
    for (const { name } of tables) {
      const [row] = await client.$queryRawUnsafe<{ n: number }[]>(
        `SELECT count(*)::int AS n FROM "${name}" WHERE workspace_id = $1::uuid`,
        workspaceId,
      );
      counts[name] = row?.n ?? -1;
    }
    return counts;
  });
}

/** What the demo itself has none of: an alternative, a correction, a price copied by a lot, payments, a confirmed tax. */
async function everyKindOfThing(demo: typeof scope): Promise<void> {
  const [job, other] = [await storedJob(demo), await storedJob(demo)];
  const alternatives = [{ materialId: other.material.id, factor: "2" }];
  const entry = someRequirementEntry(job.material.id, demo.today, { alternatives });
  const requirement = await accepted(addRequirement(demo, job.project.id, v7(), entry));
  const seen = someObservationEntry(job.material.id, job.store.id, demo.today);
  const { id } = await accepted(addObservation(demo, v7(), seen));
  await accepted(correctObservation(demo, id, { amount: decimal("3") }, "misread"));
  const payments = [{ amount: "10", on: demo.today }];
  const bought = someLotEntry(job.material.id, demo.today, { paid: null, observationId: id, payments });
  await accepted(addLot(demo, v7(), bought, { allocateTo: requirement.id }));
  for (const { code, components } of CANADA)
    for (const { name, from, fromMemory } of components)
      if (fromMemory) await accepted(confirmTax(demo, code, name, from));
}

test("the demo is made, loaded, looked at and thrown away wholly; the owner's things stay", async () => {
  await freshDatabase();
  const own = await ownerScope();
  await storedStock(own, plusDays(own.today, -3));
  const before = await rowsOf(own.workspaceId);
  expect(await demoWorkspace()).toBeNull();
  const { workspaceId } = await loadDemo(own.today);
  expect((await demoWorkspace())?.id).toBe(workspaceId);
  await everyKindOfThing({ workspaceId, actor: "demo", today: own.today });
  const loaded = await rowsOf(workspaceId);
  for (const noun of [
    "store",
    "material",
    "observation",
    "project",
    "requirement",
    "lot",
    "stock_event",
    "change",
  ])
    expect(loaded[noun]).toBeGreaterThan(0);
  await discardWorkspace(workspaceId);
  expect(await demoWorkspace()).toBeNull();
  const left = await rowsOf(workspaceId);
  expect(Object.keys(left).length).toBeGreaterThan(20);
  expect(Object.values(left).every((n) => n === 0)).toBe(true);
  expect(await rowsOf(own.workspaceId)).toEqual(before);
});

test("loading the demo again puts a new one in the place of the old, with the same things", async () => {
  const first = await loadDemo(today);
  const names = (await materialsOf({ ...first, actor: "x" })).map(({ id, name }) => `${id} ${name}`);
  const second = await loadDemo(today);
  expect(second.workspaceId).not.toBe(first.workspaceId);
  expect((await materialsOf({ ...second, actor: "x" })).map(({ id, name }) => `${id} ${name}`)).toEqual(
    names,
  );
  expect(Object.values(await rowsOf(first.workspaceId)).every((n) => n === 0)).toBe(true);
});

test("two wanting the demo at once get the same one", async () => {
  await freshDatabase();
  const made = await Promise.all(Array.from({ length: 5 }, () => makeDemoWorkspace()));
  expect(new Set(made.map(({ id }) => id)).size).toBe(1);
});

test("the owner's workspace cannot be thrown away", async () => {
  const { id } = await ownerWorkspace();
  await expect(discardWorkspace(id)).rejects.toThrow();
  expect((await ownerWorkspace()).id).toBe(id);
});

test("a scope of no workspace is a programmer's mistake, and says what to do", async () => {
  const nowhere = { workspaceId: v7(), actor: "owner" };
  await expect(workspaceOf(nowhere)).rejects.toThrow("take the scope from ownerWorkspace");
  expect(await materialsOf(nowhere)).toEqual([]);
});

test("today is the day of the workspace's time zone", async () => {
  const own = { workspaceId: (await ownerWorkspace()).id, actor: "owner" };
  const zones = ["Pacific/Kiritimati", "Pacific/Pago_Pago"] as const;
  const days: string[] = [];
  for (const timeZone of zones)
    days.push(todayOf(await accepted(updateWorkspace(own, workspaceEntry.parse({ timeZone })))));
  // UTC+14 and UTC-11: 25 hours apart, never the same day.
  expect(days[0]).not.toBe(days[1]);
});

test("work that throws leaves nothing behind", async () => {
  const own = { workspaceId: (await ownerWorkspace()).id, actor: "owner" };
  const failing = inWorkspace(own, async (tx) => {
    await tx.workspace.updateMany({ data: { name: "Half done" } });
    throw new Error("stopped");
  });
  await expect(failing).rejects.toThrow("stopped");
  expect((await ownerWorkspace()).name).not.toBe("Half done");
});
