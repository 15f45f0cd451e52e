import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addPlace } from "../../lib/data/places.ts";
import { undoAct } from "../../lib/data/stock-acts.ts";
import { addStockEvent, eventsOf } from "../../lib/data/stock-events.ts";
import { chargePlace, countPlace } from "../../lib/data/stock-place-acts.ts";
import { placeEntry } from "../../lib/stock/place-entry.ts";
import { placeCountEntry, placeMoneyEntry } from "../../lib/stock/stock-act-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, newName, ownerScope, someEvent, storedStock } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const ago = (days: number) => plusDays(today, -days);
type Given = Readonly<Record<string, unknown>>;

/** Ten sheets bought thirty days ago. */
async function stock(given: Given = {}) {
  const job = await storedStock(scope, ago(30), given);
  const add = (kind: string, quantity: string, days: number, more: Given = {}) =>
    addStockEvent(scope, job.lot.id, v7(), someEvent(kind, quantity, ago(days), more));
  return { ...job, add, forJob: { requirementId: job.requirement.id } };
}
const happened = async (lotId: string) =>
  (await eventsOf(scope, lotId)).map(({ kind, quantity }) => `${kind} ${quantity.toFixed()}`);

async function shedWith(given: Given = {}) {
  const shed = await accepted(addPlace(scope, v7(), placeEntry.parse({ name: newName("Shed"), ...given })));
  const one = await stock({ placeId: shed.id });
  const two = await stock({ placeId: shed.id });
  return { shed, one, two };
}
const counts = (on: string, ...counted: readonly (readonly [string, string])[]) =>
  placeCountEntry.parse({ on, counts: counted.map(([lotId, quantity]) => ({ lotId, quantity })) });

test("counting a place books what is found and missing there, as one act", async () => {
  const { shed, one, two } = await shedWith();
  const elsewhere = await accepted(addPlace(scope, v7(), placeEntry.parse({ name: newName("Loft") })));
  await accepted(one.add("moved", "3", 9, { placeId: elsewhere.id }));
  const id = v7();
  const entry = counts(ago(2), [one.lot.id, "6"], [two.lot.id, "11"]);
  const act = await accepted(countPlace(scope, shed.id, id, entry));
  expect(act.events.map(({ kind, quantity, placeId }) => [kind, quantity.toFixed(), placeId])).toEqual([
    ["missing", "1", shed.id], // 10 - 3 moved are 7 there
    ["found", "1", shed.id],
  ]);
  expect(await countPlace(scope, shed.id, id, entry)).toMatchObject({ ok: true, repeated: true });
  expect((await accepted(countPlace(scope, shed.id, v7(), counts(today, [one.lot.id, "6"])))).events).toEqual(
    [],
  );
  await accepted(undoAct(scope, id));
  expect([await happened(one.lot.id), await happened(two.lot.id)]).toEqual([["moved 3"], []]);
});

test("a count names each fault under its lot, and then books nothing", async () => {
  const { shed, one, two } = await shedWith();
  await accepted(two.add("allocated", "10", 9, two.forJob));
  const wrong = counts(ago(2), [one.lot.id, "5"], [two.lot.id, "8"], [v7(), "1"]);
  expect(await faultsIn(countPlace(scope, shed.id, v7(), wrong))).toEqual(["counts.2.lotId: not-there"]);
  const short = counts(ago(2), [one.lot.id, "5"], [two.lot.id, "8"]);
  expect(await faultsIn(countPlace(scope, shed.id, v7(), short))).toEqual([
    "counts.1.quantity: more-than-free",
  ]);
  const twice = counts(ago(2), [one.lot.id, "5"], [one.lot.id, "5"]);
  expect(await faultsIn(countPlace(scope, shed.id, v7(), twice))).toEqual(["counts.1.lotId: counted-twice"]);
  expect(await happened(one.lot.id)).toEqual([]);
});

test("a place counted by four at once is one loss", async () => {
  const { shed, one } = await shedWith();
  const entry = counts(today, [one.lot.id, "6"]);
  await Promise.all([1, 2, 3, 4].map(() => accepted(countPlace(scope, shed.id, v7(), entry))));
  expect(await happened(one.lot.id)).toEqual(["missing 4"]);
});

test("what a place cost is shared by room and days, to the cent, and taken back as one", async () => {
  const { shed, one, two } = await shedWith();
  await accepted(two.add("drawn", "10", 16));
  const entry = placeMoneyEntry.parse({
    amount: "10.00",
    currency: "CAD",
    from: ago(30),
    until: ago(1),
    shareBy: "count",
  });
  // Ten sheets for thirty days and ten for fourteen (ago 30 to ago 17): 300 and 140 sheet-days of 440.
  const act = await accepted(chargePlace(scope, shed.id, v7(), entry));
  expect(act.events.map(({ lotId, amount, on }) => [lotId, amount?.amount.toFixed(), on])).toEqual([
    [two.lot.id, "3.18", ago(17)],
    [one.lot.id, "6.82", ago(1)],
  ]);
  await accepted(undoAct(scope, act.id));
  expect(await happened(one.lot.id)).toEqual([]);
});

test("what a place cost is not shared by a size nobody said, nor over nothing", async () => {
  const { shed } = await shedWith();
  const entry = { amount: "10.00", currency: "CAD", from: ago(5), until: ago(1) };
  expect(await faultsIn(chargePlace(scope, shed.id, v7(), placeMoneyEntry.parse(entry)))).toEqual([
    "shareBy: space-unknown",
  ]);
  const empty = await accepted(addPlace(scope, v7(), placeEntry.parse({ name: newName("Loft") })));
  expect(await faultsIn(chargePlace(scope, empty.id, v7(), placeMoneyEntry.parse(entry)))).toEqual([
    "from: nothing-stored",
  ]);
});
