import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { countDifference } from "../../../lib/stock/counted.ts";
import { day } from "../../support/price-example.ts";
import { eventOf, lotOf } from "../../support/stock-example.ts";

const ten = lotOf(10, 200);
const on = day("2026-01-20");
const drawn = eventOf("drawn", 3, "2026-01-10", { requirementId: "a" });
const counted = (quantity: string, lot = ten, events = [drawn]) =>
  countDifference(lot, events, on, decimal(quantity));

test("a count that agrees brings nothing to light", () => {
  expect(counted("7")).toBeNull();
});

test("what is above the books was found, what is below is missing", () => {
  expect(counted("8.5")).toEqual({ kind: "found", quantity: decimal("1.5") });
  expect(counted("0")).toEqual({ kind: "missing", quantity: decimal(7) });
});

test("what is allocated is still there, and counts", () => {
  const allocated = eventOf("allocated", 6, "2026-01-11", { requirementId: "a" });
  expect(counted("7", ten, [drawn, allocated])).toBeNull();
});

test("what was ordered and not received is not there to be counted", () => {
  const ordered = lotOf(10, 200, { receipts: [{ quantity: decimal(4), on: day("2026-01-05") }] });
  expect(counted("1", ordered)).toBeNull();
});

test("what happened after the day of the count is not in the books of that day", () => {
  const later = eventOf("sold", 2, "2026-01-21");
  expect(counted("7", ten, [drawn, later])).toBeNull();
});
