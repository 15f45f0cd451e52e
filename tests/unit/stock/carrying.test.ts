import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { carryingCost, type MoneyRate, simpleInterest } from "../../../lib/stock/carrying.ts";
import { day } from "../../support/price-example.ts";
import { cad, SEVEN_PERCENT } from "../../support/stock-example.ts";

const paidOn = (amount: string, on: string) => ({ amount: cad(amount), on: day(on) });
const rate = (percent: number, from: string | null): MoneyRate => ({
  percent: decimal(percent),
  from: from === null ? null : day(from),
});
const cost = (payments: ReturnType<typeof paidOn>[], rates: readonly MoneyRate[], until: string) =>
  carryingCost(payments, rates, day(until), "CAD")?.amount.toNumber() ?? null;

describe("carrying cost", () => {
  test("is simple interest for the days between payment and use", () => {
    expect(cost([paidOn("3650", "2026-01-01")], SEVEN_PERCENT, "2026-01-11")).toBe(7);
  });

  test("runs from each payment's own day", () => {
    const payments = [paidOn("3650", "2026-01-01"), paidOn("3650", "2026-01-06")];
    expect(cost(payments, SEVEN_PERCENT, "2026-01-11")).toBe(10.5);
  });

  test("is nothing on the day paid, and nothing for a payment still to come", () => {
    expect(cost([paidOn("3650", "2026-01-11")], SEVEN_PERCENT, "2026-01-11")).toBe(0);
    expect(cost([paidOn("3650", "2026-02-01")], SEVEN_PERCENT, "2026-01-11")).toBe(0);
  });

  test("takes each day at the rate in force on it", () => {
    const rates = [rate(7, null), rate(14, "2026-01-06")];
    expect(cost([paidOn("3650", "2026-01-01")], rates, "2026-01-11")).toBe(10.5);
  });

  test("does not depend on the order rates were entered in", () => {
    const rates = [rate(14, "2026-01-06"), rate(7, null)];
    expect(cost([paidOn("3650", "2026-01-01")], rates, "2026-01-11")).toBe(10.5);
  });

  test("is not known without a money rate", () => {
    expect(cost([paidOn("3650", "2026-01-01")], [], "2026-01-11")).toBe(null);
    expect(cost([paidOn("3650", "2026-01-11")], [], "2026-01-11")).toBe(null);
  });

  test("is not known for days before the first rate", () => {
    expect(cost([paidOn("3650", "2026-01-01")], [rate(7, "2026-01-05")], "2026-01-11")).toBe(null);
  });

  test("counts a leap year's days and still divides by 365", () => {
    expect(cost([paidOn("3650", "2024-02-28")], SEVEN_PERCENT, "2024-03-01")).toBe(1.4);
  });
});

test("simple interest is amount x percent x days over 365", () => {
  expect(simpleInterest(cad(365), decimal(10), 30).amount.toNumber()).toBe(3);
});
