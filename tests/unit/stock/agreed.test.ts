import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { agreedOf } from "../../../lib/stock/agreed.ts";
import { day, store } from "../../support/price-example.ts";

const usual = store("near", {
  returnDays: 30,
  priceAdjustmentDays: 14,
  restockingPercent: decimal(15),
  leadDays: 21,
});
const ordered = { orderedOn: day("2026-01-05"), awaited: true };

test("what the store does as a rule is agreed when nothing else is said", () => {
  expect(agreedOf({}, ordered, usual)).toEqual({
    leadDays: 21,
    expectedOn: "2026-01-26",
    returnableUntil: "2026-02-04",
    adjustableUntil: "2026-01-19",
    restockingPercent: decimal(15),
  });
});

test("what has come in is expected no more", () => {
  expect(agreedOf({}, { ...ordered, awaited: false }, usual).expectedOn).toBeNull();
});

test("what is said wins, none too; an order's own lead days say when it is expected", () => {
  const said = { leadDays: 7, returnableUntil: null, restockingPercent: decimal(0) };
  expect(agreedOf(said, ordered, usual)).toMatchObject({
    expectedOn: "2026-01-12",
    returnableUntil: null,
    restockingPercent: decimal(0),
  });
  expect(agreedOf({ expectedOn: day("2026-03-01") }, ordered, usual).expectedOn).toBe("2026-03-01");
});

test("without a store, or rules of it, nothing is agreed", () => {
  const nothing = { leadDays: null, expectedOn: null, returnableUntil: null, adjustableUntil: null };
  expect(agreedOf({}, ordered, null)).toEqual({ ...nothing, restockingPercent: null });
  expect(agreedOf({}, ordered, store("far"))).toEqual({ ...nothing, restockingPercent: null });
});
