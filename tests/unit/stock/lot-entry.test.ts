import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { lotEntry } from "../../../lib/stock/lot-entry.ts";

const LOT = {
  materialId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0001",
  origin: "bought",
  quantity: "38",
  paid: { amount: "1368.00", currency: "CAD", taxIncluded: false },
  orderedOn: "2026-03-14",
};

function codes(given: Record<string, unknown>): string[] {
  const parsed = lotEntry.safeParse({ ...LOT, ...given });
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("a plain purchase is received and paid on the day it was ordered", () => {
  const parsed = lotEntry.parse(LOT);
  expect(parsed.receipts.map((one) => [one.quantity.toString(), one.on])).toEqual([["38", "2026-03-14"]]);
  expect(parsed).toMatchObject({ payments: [], observationId: null, storeId: null, terms: null });
  expect(parsed.condition.toString()).toBe("1");
});

test("what is ordered and not yet here has no receipt", () => {
  expect(lotEntry.parse({ ...LOT, origin: "special-order", acquiredOn: null }).receipts).toEqual([]);
});

test("nothing is received before it is ordered", () => {
  expect(codes({ acquiredOn: "2026-03-13" })).toEqual(["acquiredOn days-reversed"]);
});

test("a price of 0 is for what was salvaged or left over, and for a gift that says so", () => {
  const free = { amount: "0", currency: "CAD", taxIncluded: false };
  expect(codes({ paid: free })).toEqual(["paid.amount free-asked"]);
  expect(codes({ paid: free, origin: "special-order" })).toEqual(["paid.amount free-asked"]);
  expect(codes({ paid: free, givenFree: "a replacement for a warped one" })).toEqual([]);
  expect(codes({ paid: free, givenFree: " " })).toEqual(["givenFree missing"]);
  expect(codes({ paid: free, origin: "salvaged" })).toEqual([]);
  expect(codes({ paid: free, origin: "left-over" })).toEqual([]);
  expect(codes({ paid: { ...free, amount: "-1" }, origin: "salvaged" })).toEqual(["paid.amount negative"]);
});

test("a lot says what was paid, or which price it copies", () => {
  expect(codes({ paid: undefined })).toEqual(["paid missing"]);
  expect(codes({ paid: undefined, observationId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0009" })).toEqual([]);
});

test("a condition is a share above 0 and at most 1", () => {
  expect(codes({ condition: "0.6" })).toEqual([]);
  expect(codes({ condition: "0" })).toEqual(["condition not-positive"]);
  expect(codes({ condition: "1.01" })).toEqual(["condition percent-out-of-range"]);
});

test("every fault of a lot is named", () => {
  expect(
    codes({ quantity: 38, orderedOn: "soon", origin: "stolen", payments: [{ amount: "-1", on: "x" }] }),
  ).toEqual([
    "origin unknown-choice",
    "quantity not-text",
    "orderedOn not-a-day",
    "payments.0.amount negative",
    "payments.0.on not-a-day",
  ]);
});
