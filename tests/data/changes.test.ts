import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { aboutDatabase, inWorkspace } from "../../lib/data/client.ts";
import { addLot, deleteLot, undeleteLot } from "../../lib/data/lots.ts";
import { archiveMaterial, restoreMaterial } from "../../lib/data/materials.ts";
import {
  addObservation,
  correctObservation,
  deleteObservation,
  undeleteObservation,
} from "../../lib/data/observations.ts";
import { closeRequirement, reopenRequirement, reviseRequirement } from "../../lib/data/requirements.ts";
import { addStockEvent, redoStockEvent, undoStockEvent } from "../../lib/data/stock-events.ts";
import { updateWorkspace } from "../../lib/data/workspaces.ts";
import { decimal } from "../../lib/decimal.ts";
import { requirementPatch } from "../../lib/projects/requirement-entry.ts";
import { workspaceEntry } from "../../lib/tax/workspace-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  ownerScope,
  someEvent,
  someLotEntry,
  someObservationEntry,
  storedJob,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;

/** What the log says of one thing, the first change first. */
async function logOf(id: string, noun: string): Promise<string[]> {
  const { items } = await changesOf(scope, { of: id });
  return items
    .filter((change) => change.noun === noun)
    .map(({ action }) => action)
    .reverse();
}

test("every change of a price is logged: who, what, before and after, as text", async () => {
  const job = await storedJob(scope);
  const seen = someObservationEntry(job.material.id, job.store.id, today, { amount: "41.980001" });
  const { id } = await accepted(addObservation({ ...scope, actor: "at the store" }, v7(), seen));
  await accepted(correctObservation(scope, id, { amount: decimal("4.25") }, "misread"));
  await accepted(deleteObservation(scope, id));
  await accepted(undeleteObservation(scope, id));
  expect(await logOf(id, "observation")).toEqual(["created", "corrected", "deleted", "undeleted"]);
  const { items } = await changesOf(scope, { of: id });
  const corrected = items.find(({ action }) => action === "corrected");
  expect(corrected).toMatchObject({
    actor: "owner",
    before: { amount: "41.980001" },
    after: { amount: "4.25" },
  });
  expect(items.at(-1)).toMatchObject({ actor: "at the store", before: null, after: { amount: "41.980001" } });
  expect(Date.parse(corrected?.at ?? "")).toBeGreaterThan(Date.now() - 60_000);
});

test("every change of stock is logged, and is found by its lot", async () => {
  const { lot, requirement } = await storedStock(scope, plusDays(today, -5));
  const entry = someEvent("allocated", "4", today, { requirementId: requirement.id });
  const { id } = await accepted(addStockEvent(scope, lot.id, v7(), entry));
  await accepted(undoStockEvent(scope, id));
  await accepted(redoStockEvent(scope, id));
  await accepted(deleteLot(scope, lot.id));
  await accepted(undeleteLot(scope, lot.id));
  expect(await logOf(lot.id, "lot")).toEqual(["created", "deleted", "undeleted"]);
  expect(await logOf(lot.id, "stock_event")).toEqual(["created", "undone", "redone"]);
  expect(await logOf(lot.id, "lot_receipt")).toEqual(["created"]);
});

test("closing, revising, archiving and settings are logged too", async () => {
  const { requirement, material } = await storedJob(scope);
  await accepted(reviseRequirement(scope, requirement.id, requirementPatch.parse({ quantity: "7" })));
  await accepted(closeRequirement(scope, requirement.id, today));
  await accepted(reopenRequirement(scope, requirement.id));
  expect(await logOf(requirement.id, "requirement")).toEqual(["created", "closed", "reopened"]);
  expect(await logOf(requirement.id, "requirement_revision")).toEqual(["created", "changed"]);
  await accepted(archiveMaterial(scope, material.id));
  await accepted(restoreMaterial(scope, material.id));
  expect(await logOf(material.id, "material")).toEqual(["created", "archived", "restored"]);
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ moneyRate: "7" })));
  const { items } = await changesOf(scope, { limit: 1 });
  expect(items[0]).toMatchObject({ noun: "money_rate", after: { percent: "7" } });
});

test("a refused write, a repeated one and a conflict leave no line", async () => {
  const { lot, requirement, material } = await storedStock(scope, plusDays(today, -5));
  const id = v7();
  const entry = someEvent("allocated", "4", today, { requirementId: requirement.id });
  await accepted(addStockEvent(scope, lot.id, id, entry));
  const before = (await changesOf(scope, { limit: 1 })).items[0]?.id;
  await addStockEvent(scope, lot.id, id, entry);
  await addStockEvent(scope, lot.id, id, someEvent("drawn", "1", today));
  await addStockEvent(scope, lot.id, v7(), someEvent("drawn", "99", today));
  await addLot(scope, v7(), someLotEntry(material.id, today), { allocateTo: v7() });
  expect((await changesOf(scope, { limit: 1 })).items[0]?.id).toBe(before);
});

test("a write that fails half way leaves neither the write nor its line", async () => {
  const { material } = await storedJob(scope);
  const before = (await changesOf(scope, { limit: 1 })).items[0]?.id;
  const failing = inWorkspace(scope, async (tx) => {
    await tx.material.updateMany({ where: { id: material.id }, data: { note: "half done" } });
    await tx.$executeRaw`INSERT INTO store (id, name) VALUES (${v7()}::uuid, 'no currency')`;
  });
  await expect(failing).rejects.toThrow();
  expect((await changesOf(scope, { limit: 1 })).items[0]?.id).toBe(before);
  expect(await logOf(material.id, "material")).toEqual(["created"]);
});

test("the log and the kept corrections are only ever added to", async () => {
  const job = await storedJob(scope);
  const seen = someObservationEntry(job.material.id, job.store.id, today);
  const { id } = await accepted(addObservation(scope, v7(), seen));
  await accepted(correctObservation(scope, id, { amount: decimal("2") }, "misread"));
  for (const table of ["change", "observation_correction"])
    for (const what of [`UPDATE ${table} SET actor = 'x'`, `DELETE FROM ${table}`, `TRUNCATE ${table}`]) {
      await expect(inWorkspace(scope, (tx) => tx.$executeRawUnsafe(what))).rejects.toThrow(
        "permission denied",
      );
      await expect(aboutDatabase((client) => client.$executeRawUnsafe(what))).rejects.toThrow(
        "are only ever added",
      );
    }
});

test("an observation is corrected only with a reason, and never made into another sighting", async () => {
  const [job, other] = [await storedJob(scope), await storedJob(scope)];
  const seen = someObservationEntry(job.material.id, job.store.id, today);
  const { id } = await accepted(addObservation(scope, v7(), seen));
  const change = (data: object) =>
    inWorkspace(scope, (tx) => tx.observation.updateMany({ where: { id }, data }));
  await expect(change({ amount: "3" })).rejects.toThrow();
  await expect(change({ materialId: other.material.id })).rejects.toThrow();
  await expect(change({ storeId: other.store.id })).rejects.toThrow();
});

test("the log is paged without a gap or a double", async () => {
  await storedJob(scope);
  const all = (await changesOf(scope, { limit: 1000 })).items.map(({ id }) => id);
  const found: string[] = [];
  let cursor: string | null = null;
  do {
    const page = await changesOf(scope, { limit: 7, cursor });
    found.push(...page.items.map(({ id }) => id));
    cursor = page.next;
  } while (cursor !== null);
  expect(found).toEqual(all);
});
