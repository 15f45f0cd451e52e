import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { requiredOn } from "../../../lib/projects/required.ts";
import { day, SHEET, TODAY } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";
import { needOf, revisionOf } from "../../support/stock-example.ts";

const quantityOf = (answer: ReturnType<typeof requiredOn>) =>
  answer.known ? answer.quantity.toFixed() : answer.reason;

describe("what is required", () => {
  test("is the quantity with its waste on top, not divided by what is left of it", () => {
    const need = needOf("a", revisionOf(1000, { wastePercent: decimal(10) }));
    expect(quantityOf(requiredOn(need, TODAY, SHEET))).toBe("1100");
  });

  test("is not rounded to whole units", () => {
    const need = needOf("a", revisionOf(53, { wastePercent: decimal(8) }));
    expect(quantityOf(requiredOn(need, TODAY, SHEET))).toBe("57.24");
  });

  test("is read in purchase units, through the material's dimensions", () => {
    const need = needOf("a", revisionOf(800, { unit: "square-foot" }));
    expect(quantityOf(requiredOn(need, TODAY, SHEET))).toBe("25");
  });

  test("takes waste before the unit is read, and rounds neither", () => {
    const need = needOf("a", revisionOf(1000, { unit: "square-foot", wastePercent: decimal(10) }));
    expect(quantityOf(requiredOn(need, TODAY, SHEET))).toBe("34.375");
  });

  test("is refused with the reason where the material cannot be read in the unit", () => {
    const need = needOf("a", revisionOf(1000, { unit: "square-foot" }));
    expect(quantityOf(requiredOn(need, TODAY, someMaterial("bundle")))).toBe("area-unknown");
  });

  test("is not known before anything was asked for", () => {
    expect(quantityOf(requiredOn(needOf("a", revisionOf(5)), day("2025-12-31"), SHEET))).toBe("not-yet");
  });
});
