import { expect, test } from "vitest";
import { decimal, ZERO } from "../../../lib/decimal.ts";
import { projectLeftovers } from "../../../lib/show/left-over-text.ts";
import { lotDays } from "../../../lib/show/lot-days.ts";
import { lotLife } from "../../../lib/show/lot-life.ts";
import { refundTexts } from "../../../lib/show/refund-text.ts";
import { NOTHING_AGREED } from "../../../lib/stock/lot.ts";
import { day, SHEET, valuation } from "../../support/price-example.ts";
import { cad, eventOf, lotOf } from "../../support/stock-example.ts";

const ordered = lotOf(10, 200, {
  receipts: [
    { id: "r1", quantity: decimal(4), on: day("2026-01-12"), placeId: "shed" },
    { id: "r2", quantity: decimal(6), on: day("2026-01-20") },
  ],
  payments: [
    { id: "p1", amount: decimal(50), on: day("2026-01-05"), home: null },
    { id: "p2", amount: decimal(150), on: day("2026-01-20"), home: null },
  ],
});

test("a life is told the newest first, ordered and paid and received in parts", () => {
  const sold = eventOf("sold", 1, "2026-01-20", { amount: cad(15) });
  const steps = lotLife(ordered, [sold], "en-CA");
  expect(steps.map(({ step, on }) => [step, on])).toEqual([
    ["event", "2026-01-20"],
    ["received", "2026-01-20"],
    ["paid", "2026-01-20"],
    ["received", "2026-01-12"],
    ["paid", "2026-01-05"],
    ["ordered", "2026-01-05"],
  ]);
});

test("a payment of nothing is no step, and what was paid when it was ordered is none either", () => {
  const nothing = { ...ordered, payments: [{ amount: ZERO, on: day("2026-01-05"), home: null }] };
  expect(lotLife(nothing, [], "en-CA").some(({ step }) => step === "paid")).toBe(false);
  expect(lotLife(lotOf(10, 200), [], "en-CA").map(({ step }) => step)).toEqual(["received", "ordered"]);
});

test("a material keeps from the day it came in, and a day past presses too", () => {
  const material = { ...SHEET, shelfLifeDays: 90 };
  // 2026-01-12 and 90 days: 19 left in January, 28, 31, then the 12th of April
  const days = lotDays(ordered, material, day("2026-04-15"), false);
  expect(days.keeps).toEqual({ on: "2026-04-12", left: -3, near: true });
  expect(days.returnable).toBeNull();
});

test("an order is expected only while something is still to come", () => {
  const awaited = { ...ordered, agreed: { ...NOTHING_AGREED, expectedOn: day("2026-03-01") } };
  expect(lotDays(awaited, SHEET, day("2026-01-06"), true).expected).toMatchObject({ left: 54, near: false });
  expect(lotDays(awaited, SHEET, day("2026-01-06"), false).expected).toBeNull();
});

test("a refund is suggested for every whole quantity that could go back", () => {
  const agreed = { ...NOTHING_AGREED, restockingPercent: decimal(10) };
  const found = refundTexts(lotOf(10, 200, { agreed }), SHEET, valuation(), decimal(3), "en-CA");
  // 20.00 each less 10 %, no tax at the store near
  expect(Object.entries(found.byQuantity).map(([quantity, { exact }]) => [quantity, exact])).toEqual([
    ["1", "18.00"],
    ["2", "36.00"],
    ["3", "54.00"],
  ]);
  expect(found.kept).toBe("10%");
});

test("left over is what is set aside for the project, and what was used for it can come back", () => {
  const events = [
    eventOf("allocated", 6, "2026-01-06", { requirementId: "a" }),
    eventOf("allocated", 3, "2026-01-06", { requirementId: "other" }),
    eventOf("drawn", 1, "2026-01-07", { requirementId: "other" }),
    eventOf("drawn", 5, "2026-01-08", { requirementId: "a" }),
  ];
  const stock = { lots: [lotOf(10, 200)], events, materials: new Map([["sheet", SHEET]]) };
  const { over, draws } = projectLeftovers(["a"], stock, day("2026-02-01"), "en-CA");
  expect(over.map(({ quantity }) => quantity.exact)).toEqual(["1"]);
  expect(draws.map(({ quantity }) => quantity.exact)).toEqual(["5"]);
});
