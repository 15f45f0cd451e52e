import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { exposureFacts } from "../../lib/data/facts.ts";
import { addLot, deleteLot, lot, lotsOf, undeleteLot } from "../../lib/data/lots.ts";
import { addObservation, correctObservation, deleteObservation } from "../../lib/data/observations.ts";
import { placesOf } from "../../lib/data/places.ts";
import { eventsOf } from "../../lib/data/stock-events.ts";
import { addStore, changeStore } from "../../lib/data/stores.ts";
import { decimal } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someLotEntry,
  someObservationEntry,
  someStoreEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
let job: Awaited<ReturnType<typeof storedJob>>;
const some = (given: Readonly<Record<string, unknown>> = {}) => someLotEntry(job.material.id, today, given);

beforeAll(async () => {
  job = await storedJob(scope);
});

test("a lot comes back exactly as entered", async () => {
  const id = v7();
  const orderedOn = plusDays(today, -9);
  const entry = some({
    origin: "special-order",
    storeId: job.store.id,
    terms: "quote",
    quantity: "10.5",
    paid: {
      amount: "312.345678",
      currency: "USD",
      taxIncluded: true,
      taxRegion: "CA-NB",
      exemptFrom: ["HST"],
      fees: [{ name: "Delivery", amount: "60.00", basis: "order", freeFrom: "500", taxable: true }],
    },
    paidHome: "430.10",
    orderedOn,
    acquiredOn: plusDays(today, -2),
    payments: [
      { amount: "100.00", on: orderedOn, home: "137.00" },
      { amount: "212.35", on: plusDays(today, -2) },
    ],
    condition: "0.85",
    storedAt: "Shed",
    expectedOn: plusDays(today, -1),
    leadDays: 8,
    returnableUntil: plusDays(today, 5),
    adjustableUntil: null,
    restockingPercent: "15",
    otherCurrency: "the catalogue's price is in US dollars",
    note: "left door",
  });
  await accepted(addLot(scope, id, entry));
  const [shed] = await placesOf(scope);
  expect(shed).toMatchObject({ name: "Shed", area: null, archivedOn: null });
  const known = expect.any(String);
  const { expectedOn, leadDays, returnableUntil, adjustableUntil, restockingPercent, ...rest } = entry;
  expect(await lot(scope, id)).toEqual({
    ...rest,
    id,
    paidHome: money("430.10", "CAD"),
    placeId: shed?.id,
    receipts: entry.receipts.map((one) => ({ ...one, id: known, placeId: null })),
    payments: entry.payments.map((one) => ({ ...one, id: known })),
    agreed: { expectedOn, leadDays, returnableUntil, adjustableUntil, restockingPercent },
    givenFree: null,
    deletedAt: null,
  });
});

test("what a store agrees to as a rule is copied into what is bought there, and stays when the store changes", async () => {
  const rules = { returnDays: 30, priceAdjustmentDays: 14, restockingPercent: "10", leadDays: 21 };
  const { id: storeId } = await accepted(addStore(scope, v7(), someStoreEntry(rules)));
  const made = await accepted(addLot(scope, v7(), some({ storeId, acquiredOn: null })));
  await accepted(changeStore(scope, storeId, { returnDays: null, restockingPercent: null }));
  expect((await lot(scope, made.id))?.agreed).toEqual({
    leadDays: 21,
    expectedOn: plusDays(today, 21),
    returnableUntil: plusDays(today, 30),
    adjustableUntil: plusDays(today, 14),
    restockingPercent: decimal("10"),
  });
  const said = some({ storeId, returnableUntil: null, adjustableUntil: plusDays(today, 2) });
  expect((await accepted(addLot(scope, v7(), said))).agreed).toMatchObject({
    expectedOn: null,
    returnableUntil: null,
    adjustableUntil: plusDays(today, 2),
  });
});

test("paid in another currency than the store's: asked, and taken with a reason", async () => {
  const paid = { amount: "300.00", currency: "USD", taxIncluded: false };
  const entry = { storeId: job.store.id, paid };
  expect(await faultsIn(addLot(scope, v7(), some(entry)))).toEqual(["paid.currency: other-currency"]);
  const why = "paid by a foreign card";
  expect((await accepted(addLot(scope, v7(), some({ ...entry, otherCurrency: why })))).otherCurrency).toBe(
    why,
  );
});

test("a place is named in any capitals and is one place", async () => {
  const one = await accepted(addLot(scope, v7(), some({ storedAt: "North wall" })));
  const two = await accepted(addLot(scope, v7(), some({ storedAt: "north WALL" })));
  expect([two.placeId, two.storedAt]).toEqual([one.placeId, "North wall"]);
  expect(await faultsIn(addLot(scope, v7(), some({ placeId: v7() })))).toEqual(["placeId: not-there"]);
});

test("a lot not received yet has no receipt", async () => {
  const made = await accepted(addLot(scope, v7(), some({ acquiredOn: null })));
  expect(made.receipts).toEqual([]);
});

test("the same create again is repeated; other content, or another purpose, is a conflict", async () => {
  const id = v7();
  await accepted(addLot(scope, id, some()));
  expect(await addLot(scope, id, some())).toMatchObject({ ok: true, repeated: true });
  expect(await addLot(scope, id, some({ quantity: "9" }))).toMatchObject({ why: "conflict" });
  const forJob = { allocateTo: job.requirement.id };
  expect(await addLot(scope, id, some(), forJob)).toMatchObject({ why: "conflict" });
  expect(await eventsOf(scope, id)).toEqual([]);
});

test("bought for a requirement: the lot and its allocation are one write, once", async () => {
  const id = v7();
  const forJob = { allocateTo: job.requirement.id };
  await accepted(addLot(scope, id, some(), forJob));
  expect(await addLot(scope, id, some(), forJob)).toMatchObject({ ok: true, repeated: true });
  const events = await eventsOf(scope, id);
  expect(events).toHaveLength(1);
  expect(events[0]).toMatchObject({
    kind: "allocated",
    on: today,
    requirementId: job.requirement.id,
    quantity: decimal("10"),
  });
});

test("bought for what is not there, or takes another material: nothing is written, not even the lot", async () => {
  const id = v7();
  expect(await faultsIn(addLot(scope, id, some(), { allocateTo: v7() }))).toEqual([
    "requirementId: not-there",
  ]);
  const other = await storedJob(scope);
  expect(await faultsIn(addLot(scope, id, some(), { allocateTo: other.requirement.id }))).toEqual([
    "requirementId: wrong-material",
  ]);
  expect(await lot(scope, id)).toBeNull();
});

test("a lot without a receipt copies the price seen: amount for its quantity, tax, fees, store and terms", async () => {
  const seen = someObservationEntry(job.material.id, job.store.id, today, {
    terms: "special",
    amount: "20.00",
    per: { quantity: "3", unit: "sheet" },
    taxIncluded: true,
    fees: [{ name: "Cut", amount: "1.50", basis: "unit", taxable: true }],
  });
  const { id } = await accepted(addObservation(scope, v7(), seen));
  const made = await accepted(addLot(scope, v7(), some({ paid: null, observationId: id, quantity: "38" })));
  // 3 for 20.00: 38 cost 253.33, by hand (rules.md R1).
  expect(made.paid).toMatchObject({ amount: decimal("253.33"), currency: "CAD", taxIncluded: true });
  expect(made.paid.fees[0]?.amount).toEqual(decimal("1.50"));
  expect(made).toMatchObject({ storeId: job.store.id, terms: "special", observationId: id });
});

test("a copied price has the store's standing discount off it", async () => {
  const store = await accepted(addStore(scope, v7(), someStoreEntry({ discounts: [{ percent: "3" }] })));
  const seen = someObservationEntry(job.material.id, store.id, today, { amount: "40.00" });
  const { id } = await accepted(addObservation(scope, v7(), seen));
  const made = await accepted(addLot(scope, v7(), some({ paid: null, observationId: id })));
  // 10 x 40.00 x 0.97, by hand.
  expect(made.paid.amount).toEqual(decimal("388"));
});

test("correcting the price later does not change the lot that copied it", async () => {
  const seen = someObservationEntry(job.material.id, job.store.id, today);
  const { id } = await accepted(addObservation(scope, v7(), seen));
  const made = await accepted(addLot(scope, v7(), some({ paid: null, observationId: id })));
  await accepted(correctObservation(scope, id, { amount: decimal("1") }, "misread"));
  expect((await lot(scope, made.id))?.paid.amount).toEqual(decimal("419.8"));
});

test("every fault of a lot is named", async () => {
  const wrong = {
    ...some({
      storeId: v7(),
      observationId: v7(),
      acquiredOn: plusDays(today, 9),
      payments: [{ amount: "1", on: plusDays(today, 2) }],
      terms: "none-left",
      paid: { amount: "1", currency: "CAD", taxIncluded: false, taxRegion: "ZZ-1" },
    }),
    materialId: v7(),
    orderedOn: plusDays(today, 2),
  };
  expect(await faultsIn(addLot(scope, v7(), wrong))).toEqual([
    "materialId: not-there",
    "storeId: not-there",
    "observationId: not-there",
    "orderedOn: day-ahead",
    "acquiredOn: day-ahead",
    "payments.0.on: day-ahead",
    "paid.taxRegion: unknown-region",
    "terms: unknown-choice",
  ]);
});

test("a price of another material, a deleted one, or none at all cannot be copied", async () => {
  const other = await storedJob(scope);
  const elsewhere = someObservationEntry(other.material.id, other.store.id, today);
  const ofOther = await accepted(addObservation(scope, v7(), elsewhere));
  const copy = (observationId: string) => addLot(scope, v7(), some({ paid: null, observationId }));
  expect(await faultsIn(copy(ofOther.id))).toEqual(["observationId: wrong-material"]);
  const seen = someObservationEntry(job.material.id, job.store.id, today);
  const deleted = await accepted(addObservation(scope, v7(), seen));
  await accepted(deleteObservation(scope, deleted.id));
  expect(await faultsIn(copy(deleted.id))).toEqual(["observationId: not-there"]);
  const none = someObservationEntry(job.material.id, job.store.id, today, {
    terms: "none-left",
    amount: undefined,
    currency: undefined,
  });
  const nothing = await accepted(addObservation(scope, v7(), none));
  expect(await faultsIn(copy(nothing.id))).toEqual(["paid: missing"]);
});

test("a day ahead counts as today on every date of a lot", async () => {
  const ahead = plusDays(today, 1);
  const entry = some({ acquiredOn: ahead, payments: [{ amount: "1", on: ahead }] });
  const made = await accepted(addLot(scope, v7(), { ...entry, orderedOn: ahead }));
  expect([made.orderedOn, made.receipts[0]?.on, made.payments[0]?.on]).toEqual([today, today, today]);
});

test("a deleted lot is out of the books with its events, and comes back with them", async () => {
  const made = await accepted(addLot(scope, v7(), some(), { allocateTo: job.requirement.id }));
  const inBooks = async () => {
    const facts = await exposureFacts(scope, today);
    return [
      (await lotsOf(scope, { materialId: job.material.id })).some(({ id }) => id === made.id),
      facts.lots.some(({ id }) => id === made.id),
      facts.events.some(({ lotId }) => lotId === made.id),
    ];
  };
  expect(await inBooks()).toEqual([true, true, true]);
  await accepted(deleteLot(scope, made.id));
  expect(await inBooks()).toEqual([false, false, false]);
  expect((await lotsOf(scope, { deleted: true })).map(({ id }) => id)).toContain(made.id);
  expect(await deleteLot(scope, made.id)).toMatchObject({ ok: true, repeated: true });
  expect(await addLot(scope, made.id, some(), { allocateTo: job.requirement.id })).toMatchObject({
    ok: true,
    repeated: true,
  });
  await accepted(undeleteLot(scope, made.id));
  expect(await inBooks()).toEqual([true, true, true]);
});

test("a lot that is not there is not there", async () => {
  expect(await lot(scope, v7())).toBeNull();
  expect(await deleteLot(scope, v7())).toEqual({ ok: false, why: "not-there" });
  expect(await undeleteLot(scope, v7())).toEqual({ ok: false, why: "not-there" });
});
