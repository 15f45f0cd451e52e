import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { savingsFacts } from "../../lib/data/facts.ts";
import { addLot, lot as lotOf } from "../../lib/data/lots.ts";
import { addRequirement } from "../../lib/data/requirements.ts";
import { redoAct, stockAct, undoAct } from "../../lib/data/stock-acts.ts";
import { addStockEvent, eventsOf, redoStockEvent, undoStockEvent } from "../../lib/data/stock-events.ts";
import { leftoversOf, returnLeftovers, takeBackUnused } from "../../lib/data/stock-leftovers.ts";
import { moveBetween } from "../../lib/data/stock-transfers.ts";
import { savings } from "../../lib/savings/savings.ts";
import { lotState } from "../../lib/stock/lot-state.ts";
import { leftoversEntry, transferEntry, unusedEntry } from "../../lib/stock/stock-act-entry.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someEvent,
  someLotEntry,
  someRequirementEntry,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const ago = (days: number) => plusDays(today, -days);
type Given = Readonly<Record<string, unknown>>;

/** Ten sheets bought thirty days ago, `aside` of them set aside for a job that needs twenty; another need of the same material. */
async function stock(aside = "0", given: Given = {}) {
  const job = await storedStock(scope, ago(30), given);
  const { lot, requirement, project, material } = job;
  const entry = someRequirementEntry(material.id, today);
  const other = await accepted(addRequirement(scope, project.id, v7(), entry));
  const add = (kind: string, quantity: string, days: number, more: Given = {}) =>
    addStockEvent(scope, lot.id, v7(), someEvent(kind, quantity, ago(days), more));
  const forJob = { requirementId: requirement.id };
  if (aside !== "0") await accepted(add("allocated", aside, 20, forJob));
  return { ...job, other, add, forJob };
}

async function state(lotId: string, day = today) {
  const lot = await lotOf(scope, lotId);
  if (lot === null) throw new Error("the lot is not there");
  return lotState(lot, await eventsOf(scope, lotId), day);
}
const aside = async (lotId: string, requirementId: string) =>
  (await state(lotId)).allocated.get(requirementId)?.toFixed() ?? "0";
const happened = async (lotId: string) =>
  (await eventsOf(scope, lotId)).map(({ kind, quantity }) => `${kind} ${quantity.toFixed()}`);

test("moving between requirements releases and allocates as one act, undone and redone as one", async () => {
  const { lot, requirement, other } = await stock("7");
  const entry = transferEntry.parse({
    fromRequirementId: requirement.id,
    toRequirementId: other.id,
    quantity: "5",
    on: ago(3),
    reason: "the shed first",
  });
  const id = v7();
  await accepted(moveBetween(scope, id, entry));
  expect(await moveBetween(scope, id, entry)).toMatchObject({ ok: true, repeated: true });
  expect([await aside(lot.id, requirement.id), await aside(lot.id, other.id)]).toEqual(["2", "5"]);
  const [, released] = await eventsOf(scope, lot.id);
  // Half of it cannot be undone: all of it is.
  await accepted(undoStockEvent(scope, released?.id ?? ""));
  expect([await aside(lot.id, requirement.id), await aside(lot.id, other.id)]).toEqual(["7", "0"]);
  expect((await stockAct(scope, id))?.undoneAt).not.toBeNull();
  await accepted(redoAct(scope, id));
  expect([await aside(lot.id, requirement.id), await aside(lot.id, other.id)]).toEqual(["2", "5"]);
  const { items } = await changesOf(scope, { of: id });
  expect(items.map(({ action, actor }) => `${action} by ${actor}`)).toEqual([
    "redone by owner",
    "undone by owner",
    "created by owner",
  ]);
});

test("more than is set aside is not moved, nor to what takes another material; nothing is written", async () => {
  const { lot, requirement, other } = await stock("4");
  const strange = await stock();
  const move = (quantity: string, toRequirementId = other.id) =>
    moveBetween(
      scope,
      v7(),
      transferEntry.parse({ fromRequirementId: requirement.id, toRequirementId, quantity, on: today }),
    );
  expect(await move("5")).toMatchObject({
    faults: [{ path: "quantity", code: "more-than-allocated", values: { has: "4" } }],
  });
  expect(await faultsIn(move("1", strange.requirement.id))).toEqual(["toRequirementId: wrong-material"]);
  expect(await faultsIn(move("1", v7()))).toEqual(["toRequirementId: not-there"]);
  expect(await happened(lot.id)).toEqual(["allocated 4"]);
});

test("of several lots the oldest is moved first", async () => {
  const { lot, material, requirement, other } = await stock("4");
  const older = someLotEntry(material.id, ago(60));
  const { id } = await accepted(addLot(scope, v7(), older, { allocateTo: requirement.id }));
  const entry = { fromRequirementId: requirement.id, toRequirementId: other.id, quantity: "12", on: today };
  await accepted(moveBetween(scope, v7(), transferEntry.parse(entry)));
  expect([await aside(id, other.id), await aside(lot.id, other.id)]).toEqual(["10", "2"]);
});

test("twenty moves between requirements at once move no more than was set aside", async () => {
  const { lot, requirement, other } = await stock("10");
  const entry = { fromRequirementId: requirement.id, toRequirementId: other.id, quantity: "1", on: today };
  const answers = await Promise.all(
    Array.from({ length: 20 }, () => moveBetween(scope, v7(), transferEntry.parse(entry))),
  );
  expect(answers.filter(({ ok }) => ok)).toHaveLength(10);
  expect(await aside(lot.id, other.id)).toBe("10");
});

test("what a draw did not use comes back: undrawn, and the rest drawn again the same day; the realised row follows", async () => {
  const { lot, add, forJob, requirement } = await stock("10");
  const draw = await accepted(add("drawn", "8", 9, forJob));
  const later = await accepted(add("drawn", "2", 9, forJob));
  const act = await accepted(takeBackUnused(scope, draw.id, v7(), unusedEntry.parse({ quantity: "3" })));
  const events = await eventsOf(scope, lot.id);
  expect(events.map(({ quantity, on }) => [quantity.toFixed(), on])).toEqual([
    ["10", ago(20)],
    ["5", ago(9)],
    ["2", ago(9)],
  ]);
  expect(events[2]?.id).toBe(later.id);
  const facts = await savingsFacts(scope, null, today);
  const rows = savings(null, null, today, facts).rows.filter((row) => row.lotId === lot.id);
  expect(rows.map((row) => [row.kind, row.quantity.toFixed()])).toEqual([
    ["drawn", "5"],
    ["drawn", "2"],
    ["held", "3"],
  ]);
  expect(await redoStockEvent(scope, draw.id)).toMatchObject({
    faults: [{ code: "held-by-an-act", values: { act: act.id } }],
  });
  await accepted(undoAct(scope, act.id));
  expect(await happened(lot.id)).toEqual(["allocated 10", "drawn 8", "drawn 2"]);
  expect(await aside(lot.id, requirement.id)).toBe("0");
  const more = takeBackUnused(scope, draw.id, v7(), unusedEntry.parse({ quantity: "9" }));
  expect(await faultsIn(more)).toEqual(["quantity: more-than-drawn"]);
});

test("an act whose draw was taken back once more is not undone before that is", async () => {
  const { lot, add, forJob } = await stock("10");
  const draw = await accepted(add("drawn", "8", 9, forJob));
  const back = (id: string, quantity: string) =>
    takeBackUnused(scope, id, v7(), unusedEntry.parse({ quantity }));
  const first = await accepted(back(draw.id, "1"));
  const second = await accepted(back(first.events[0]?.id ?? "", "7"));
  expect(second.events).toEqual([]);
  expect(await faultsIn(undoAct(scope, first.id))).toEqual([": held-by-an-act"]);
  await accepted(undoAct(scope, second.id));
  await accepted(undoAct(scope, first.id));
  expect(await happened(lot.id)).toEqual(["allocated 10", "drawn 8"]);
});

test("the left-overs of a project go back to stock at cost in one step, unused draws with them", async () => {
  const { lot, project, requirement, other, add, forJob } = await stock("8");
  const draw = await accepted(add("drawn", "5", 9, forJob));
  await accepted(add("allocated", "2", 8, { requirementId: other.id }));
  expect((await leftoversOf(scope, project.id, today))?.map(({ quantity }) => quantity.toFixed())).toEqual([
    "3",
    "2",
  ]);
  const unused = [{ eventId: draw.id, quantity: "1" }];
  const entry = leftoversEntry.parse({ projectId: project.id, on: today, unused });
  const id = v7();
  await accepted(returnLeftovers(scope, id, entry));
  const after = await state(lot.id);
  expect([after.free.toFixed(), after.drawn.get(requirement.id)?.toFixed()]).toEqual(["6", "4"]);
  expect(await leftoversOf(scope, project.id, today)).toEqual([]);
  expect(await faultsIn(returnLeftovers(scope, v7(), { ...entry, unused: [] }))).toEqual([
    "projectId: nothing-left-over",
  ]);
  await accepted(undoAct(scope, id));
  expect(await happened(lot.id)).toEqual(["allocated 8", "drawn 5", "allocated 2"]);
  const wrong = { ...entry, unused: [{ eventId: v7(), quantity: draw.quantity }] };
  expect(await faultsIn(returnLeftovers(scope, v7(), wrong))).toEqual(["unused.0.eventId: not-there"]);
});

test("a return after the last return day asks for a reason", async () => {
  const { add } = await stock("0", { returnableUntil: ago(5) });
  const refund = { amount: "30.00", currency: "CAD" };
  await accepted(add("returned", "1", 5, refund));
  expect(await add("returned", "1", 4, refund)).toMatchObject({
    faults: [{ path: "reason", code: "after-return-day", values: { until: ago(5) } }],
  });
  await accepted(add("returned", "1", 4, { ...refund, reason: "the manager agreed" }));
});

test("storage money on a lot needs something on hand to bear it", async () => {
  const { lot, add } = await stock("0", { acquiredOn: ago(10) });
  const rent = (days: number) => {
    const entry = { kind: "stored", on: ago(days), amount: "12.00", currency: "CAD" };
    return addStockEvent(scope, lot.id, v7(), stockEventEntry.parse(entry));
  };
  expect(await faultsIn(rent(11))).toEqual(["on: nothing-on-hand"]);
  await accepted(rent(10));
  await accepted(add("drawn", "10", 5));
  await accepted(rent(5));
  expect(await faultsIn(rent(4))).toEqual(["on: nothing-on-hand"]);
});
