import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Lot, StockEvent } from "../../../lib/stock/lot.ts";
import { day, observation, SHEET, TODAY } from "../../support/price-example.ts";
import {
  cad,
  eventOf,
  factsOf,
  lotOf,
  needOf,
  revisionOf,
  SEVEN_PERCENT,
} from "../../support/stock-example.ts";

const HALF = { ...SHEET, id: "half-sheet", name: "half a sheet" };
const need = needOf("a", revisionOf(20), {
  alternatives: [{ materialId: "half-sheet", factor: decimal(2) }],
});
const allocated = (quantity: number, given: Partial<StockEvent> = {}) =>
  eventOf("allocated", quantity, "2026-01-06", { requirementId: "a", ...given });

function line(
  lots: readonly Lot[],
  events: readonly StockEvent[],
  given: Parameters<typeof factsOf>[0] = {},
) {
  const facts = factsOf({ requirements: [need], materials: [SHEET, HALF], lots, events, ...given });
  return exposure(TODAY, facts).projects[0]?.lines[0];
}

describe("what is locked in", () => {
  test("is at the lot's own cost, not at today's price", () => {
    const seen = { observations: [observation("35.00")] };
    expect(line([lotOf(10, 200)], [allocated(4)], seen)?.lockedCost).toEqual(cad(80));
  });

  test("of several lots is the sum of their shares", () => {
    const lots = [lotOf(3, 100), lotOf(10, 250, { id: "second" })];
    expect(line(lots, [allocated(1), allocated(4, { lotId: "second" })])).toMatchObject({
      lockedIn: decimal(5),
      lockedCost: cad("133.33"),
    });
  });

  test("of an accepted alternative counts for what it replaces", () => {
    const lots = [lotOf(10, 90, { materialId: "half-sheet" })];
    expect(line(lots, [allocated(6)])).toMatchObject({ lockedIn: decimal(3), open: decimal(17) });
  });

  test("of another material costs and covers nothing, and says so", () => {
    const lots = [lotOf(10, 90, { materialId: "board" })];
    const found = line(lots, [allocated(6)], { materials: [SHEET, HALF, { ...SHEET, id: "board" }] });
    expect(found).toMatchObject({
      lockedIn: decimal(0),
      lockedCost: cad(54),
      remarks: ["other-material-locked-in"],
    });
  });

  test("does not include what was drawn for no requirement, sold or written off", () => {
    const events = [
      eventOf("drawn", 2, "2026-01-06"),
      eventOf("sold", 2, "2026-01-06", { amount: cad(50) }),
      eventOf("written-off", 2, "2026-01-06", { requirementId: "a" }),
    ];
    expect(line([lotOf(10, 200)], events)?.lockedIn.toNumber()).toBe(0);
  });

  test("is locked in from the day ordered, and shown as on order until received", () => {
    const ordered = lotOf(10, 200, { receipts: [{ quantity: decimal(10), on: day("2026-04-01") }] });
    expect(line([ordered], [allocated(10)])).toMatchObject({
      lockedIn: decimal(10),
      onOrder: decimal(10),
      open: decimal(10),
    });
  });

  test("as of a day before it was ordered is nothing", () => {
    const later = lotOf(10, 200, { orderedOn: day("2026-03-03") });
    expect(line([later], [allocated(10, { on: day("2026-03-03") })])?.lockedIn.toNumber()).toBe(0);
  });

  test("at a cost that cannot be said counts as a quantity, with a remark", () => {
    expect(line([lotOf(10, 200, { storeId: null })], [allocated(4)])).toMatchObject({
      lockedIn: decimal(4),
      lockedCost: cad(0),
      remarks: ["lot-cost-unknown"],
      unrealisedSaving: null,
    });
  });

  test("of a lot whose material is not among the facts is a programmer's mistake", () => {
    expect(() => line([lotOf(10, 90, { materialId: "board" })], [allocated(6)])).toThrow(RangeError);
  });
});

describe("the unrealised saving", () => {
  const seen = { observations: [observation("24.00")] };

  test("is the going price today less cost, for what is allocated and not drawn", () => {
    const events = [allocated(6), eventOf("drawn", 4, "2026-01-07", { requirementId: "a" })];
    expect(line([lotOf(10, 200)], events, seen)?.unrealisedSaving).toEqual(cad(8));
  });

  test("is less by carrying cost where a money rate is entered", () => {
    const found = line([lotOf(10, 200)], [allocated(10)], { ...seen, moneyRates: SEVEN_PERCENT });
    // 200 x 7 % x 56 / 365 = 2.147...
    expect(found?.unrealisedSaving).toEqual(cad("37.85"));
  });

  test("is a loss where the price fell", () => {
    expect(line([lotOf(10, 300)], [allocated(10)], seen)?.unrealisedSaving).toEqual(cad(-60));
  });

  test("is not known without a going price, never zero", () => {
    expect(line([lotOf(10, 200)], [allocated(10)])?.unrealisedSaving).toBe(null);
  });

  test("is zero with nothing allocated", () => {
    expect(line([lotOf(10, 200)], [])?.unrealisedSaving).toEqual(cad(0));
  });
});
