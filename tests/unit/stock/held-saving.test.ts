import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Money } from "../../../lib/money/money.ts";
import { carryingShare, goingValue, stockSaving } from "../../../lib/stock/held-saving.ts";
import { cad, lotOf } from "../../support/stock-example.ts";

const going = (price: string) =>
  ({ known: true, price: cad(price), unit: "sheet", stores: 1, kind: "fresh" }) as const;
const text = (value: Money | null) => value?.amount.toFixed() ?? null;

describe("what stock is worth", () => {
  test("is the going price for each unit, rounded once", () => {
    expect(text(goingValue(lotOf(10, 0), decimal(3), going("6.665")))).toBe("20");
  });

  test("is less by the condition of salvage", () => {
    expect(text(goingValue(lotOf(10, 0, { condition: decimal("0.5") }), decimal(3), going("20")))).toBe("30");
  });

  test("is not known without a going price, never zero", () => {
    expect(goingValue(lotOf(10, 0), decimal(3), { known: false })).toBe(null);
  });
});

describe("a part's carrying cost", () => {
  test("is its part of the lot's, rounded once", () => {
    expect(text(carryingShare(lotOf(3, 0), decimal(1), cad("1.00")))).toBe("0.33");
  });

  test("is not known where the lot's is not", () => {
    expect(carryingShare(lotOf(3, 0), decimal(1), null)).toBe(null);
  });
});

describe("a saving on stock", () => {
  test("is what it is worth less cost and carrying", () => {
    expect(text(stockSaving(cad(100), cad(80), cad(5)))).toBe("15");
  });

  test("is a loss, in full, where it is worth less", () => {
    expect(text(stockSaving(cad(70), cad(80), cad(5)))).toBe("-15");
  });

  test("is before carrying cost where that is not known", () => {
    expect(text(stockSaving(cad(100), cad(80), null))).toBe("20");
  });

  test("is not known where the worth is not", () => {
    expect(stockSaving(null, cad(80), cad(5))).toBe(null);
  });
});
