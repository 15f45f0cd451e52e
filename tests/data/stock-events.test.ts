import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { deleteLot } from "../../lib/data/lots.ts";
import {
  addStockEvent,
  eventsOf,
  redoStockEvent,
  stockEvent,
  undoStockEvent,
} from "../../lib/data/stock-events.ts";
import { lotState } from "../../lib/stock/lot-state.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someEvent,
  storedJob,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const ago = (days: number) => plusDays(today, -days);
const boughtOn = ago(30);

async function stock(given: Readonly<Record<string, unknown>> = {}) {
  const job = await storedStock(scope, boughtOn, given);
  const forJob = { requirementId: job.requirement.id };
  const add = (kind: string, quantity: string, days: number, more: Readonly<Record<string, unknown>> = {}) =>
    addStockEvent(scope, job.lot.id, v7(), someEvent(kind, quantity, ago(days), more));
  return { ...job, forJob, add };
}

test("each kind of event comes back as entered", async () => {
  const { lot, forJob, add } = await stock();
  await accepted(add("allocated", "8", 20, forJob));
  await accepted(add("released", "1", 19, forJob));
  await accepted(add("drawn", "2.5", 18, { ...forJob, reason: "first wall" }));
  await accepted(add("drawn", "0.5", 17));
  await accepted(add("returned", "1", 16, { amount: "30.00", currency: "USD" }));
  await accepted(add("sold", "0.25", 15, { amount: "0", currency: "CAD" }));
  await accepted(add("written-off", "0.25", 14, { reason: "wet" }));
  await accepted(add("found", "2", 13));
  await accepted(add("missing", "1", 12));
  const events = await eventsOf(scope, lot.id);
  expect(events.map(({ kind, quantity, on }) => [kind, quantity.toFixed(), on])).toEqual([
    ["allocated", "8", ago(20)],
    ["released", "1", ago(19)],
    ["drawn", "2.5", ago(18)],
    ["drawn", "0.5", ago(17)],
    ["returned", "1", ago(16)],
    ["sold", "0.25", ago(15)],
    ["written-off", "0.25", ago(14)],
    ["found", "2", ago(13)],
    ["missing", "1", ago(12)],
  ]);
  expect(events[2]).toMatchObject({ ...forJob, reason: "first wall", amount: null, undoneAt: null });
  expect(events[4]?.amount).toMatchObject({ currency: "USD" });
  expect(events[5]?.amount?.amount.toFixed()).toBe("0");
});

test("the same event again is repeated; other content, or another lot, is a conflict", async () => {
  const { lot, forJob } = await stock();
  const other = await stock();
  const id = v7();
  const entry = someEvent("allocated", "4", today, forJob);
  await accepted(addStockEvent(scope, lot.id, id, entry));
  expect(await addStockEvent(scope, lot.id, id, entry)).toMatchObject({ ok: true, repeated: true });
  expect(await addStockEvent(scope, lot.id, id, someEvent("allocated", "5", today, forJob))).toMatchObject({
    why: "conflict",
  });
  expect(await addStockEvent(scope, other.lot.id, id, entry)).toMatchObject({ why: "conflict" });
});

test("no more than is free can be set aside; the fault says how much there is", async () => {
  const { forJob, add } = await stock();
  await accepted(add("allocated", "7", 5, forJob));
  const answer = await add("allocated", "3.000001", 4, forJob);
  expect(answer).toEqual({
    ok: false,
    why: "faults",
    faults: [{ path: "quantity", code: "more-than-free", values: { has: "3" } }],
  });
});

test("a back-dated event that a later one leaves no room for is refused, and the later one is named", async () => {
  const { forJob, add } = await stock();
  const later = await accepted(add("drawn", "8", 5));
  const answer = await add("allocated", "3", 10, forJob);
  expect(answer).toMatchObject({
    ok: false,
    why: "faults",
    faults: [
      {
        path: "on",
        code: "event-in-the-way",
        values: { event: later.id, kind: "drawn", on: ago(5), quantity: "8" },
      },
    ],
  });
  await accepted(undoStockEvent(scope, later.id));
  await accepted(add("allocated", "3", 10, forJob));
});

test("nothing happens to a lot before it was ordered, or is drawn before it came in", async () => {
  const { forJob, add } = await stock({ acquiredOn: ago(10) });
  expect(await faultsIn(add("allocated", "1", 31, forJob))).toEqual(["on: before-acquisition"]);
  expect(await faultsIn(add("drawn", "1", 11))).toEqual(["quantity: not-received-yet"]);
  await accepted(add("allocated", "1", 30, forJob));
  await accepted(add("drawn", "1", 10));
});

test("a day ahead counts as today, two are refused", async () => {
  const { add } = await stock();
  expect(await accepted(add("drawn", "1", -1))).toMatchObject({ on: today });
  expect(await faultsIn(add("drawn", "1", -2))).toEqual(["on: day-ahead"]);
});

test("stock is set aside only for what is there and takes the material", async () => {
  const { add } = await stock();
  const other = await storedJob(scope);
  expect(await faultsIn(add("allocated", "1", 1, { requirementId: v7() }))).toEqual([
    "requirementId: not-there",
  ]);
  expect(await faultsIn(add("drawn", "1", 1, { requirementId: other.requirement.id }))).toEqual([
    "requirementId: wrong-material",
  ]);
});

test("an undone event counts no more, stays readable, and can be redone", async () => {
  const { lot, add } = await stock();
  const { id } = await accepted(add("drawn", "4", 3));
  await accepted(undoStockEvent(scope, id));
  expect(await eventsOf(scope, lot.id)).toEqual([]);
  expect((await eventsOf(scope, lot.id, { includeUndone: true })).map((event) => event.id)).toEqual([id]);
  expect((await stockEvent(scope, id))?.undoneAt).not.toBeNull();
  expect(await undoStockEvent(scope, id)).toMatchObject({ ok: true, repeated: true });
  await accepted(redoStockEvent(scope, id));
  expect(lotState(lot, await eventsOf(scope, lot.id), today).drawnForNone.toFixed()).toBe("4");
  expect(await redoStockEvent(scope, id)).toMatchObject({ ok: true, repeated: true });
});

test("an allocation that a draw has used cannot be undone while others hold the rest; the draw is named", async () => {
  const { forJob, add } = await stock();
  const allocated = await accepted(add("allocated", "4", 10, forJob));
  const released = await accepted(add("released", "4", 5, forJob));
  const answer = await undoStockEvent(scope, allocated.id);
  expect(answer).toMatchObject({
    faults: [{ code: "event-in-the-way", values: { event: released.id, kind: "released" } }],
  });
});

test("an undone event is not redone where something else has taken its place", async () => {
  const { add } = await stock();
  const first = await accepted(add("drawn", "8", 5));
  await accepted(undoStockEvent(scope, first.id));
  const second = await accepted(add("sold", "8", 4, { amount: "1", currency: "CAD" }));
  expect(await redoStockEvent(scope, first.id)).toMatchObject({
    faults: [{ code: "event-in-the-way", values: { event: second.id } }],
  });
});

test("what is not there is not there, nor is anything of a deleted lot", async () => {
  const { lot, add } = await stock();
  const { id } = await accepted(add("drawn", "1", 3));
  await accepted(deleteLot(scope, lot.id));
  expect(await add("drawn", "1", 2)).toEqual({ ok: false, why: "not-there" });
  expect(await undoStockEvent(scope, id)).toEqual({ ok: false, why: "not-there" });
  expect(await undoStockEvent(scope, v7())).toEqual({ ok: false, why: "not-there" });
  expect(await addStockEvent(scope, v7(), v7(), someEvent("drawn", "1", today))).toEqual({
    ok: false,
    why: "not-there",
  });
});
