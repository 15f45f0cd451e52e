import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { lineBudget, projectBudget } from "../../../lib/projects/budget.ts";
import { cad, projectOf, revisionOf } from "../../support/stock-example.ts";

const text = (value: ReturnType<typeof projectBudget>) => value?.amount.toFixed(2) ?? null;

describe("a budget", () => {
  test("of a line is what is required, waste included, at the price budgeted", () => {
    expect(text(lineBudget(revisionOf(53, { budgetUnitPrice: cad("36.00") }), decimal("57.24")))).toBe(
      "2060.64",
    );
  });

  test("of a line is rounded once, half up", () => {
    const budget = lineBudget(revisionOf(1, { budgetUnitPrice: cad("0.005") }), decimal(1));
    expect(budget?.amount.toFixed()).toBe("0.01");
  });

  test("of a line without a budgeted price is none, not zero", () => {
    expect(lineBudget(revisionOf(1), decimal(1))).toBe(null);
  });

  test("of a project's own wins over the sum of its lines", () => {
    expect(text(projectBudget(projectOf("job", { budget: cad(500) }), [cad(100), cad(200)]))).toBe("500.00");
  });

  test("of a project without its own is the sum of its lines", () => {
    expect(text(projectBudget(projectOf("job"), [cad("100.10"), cad(200)]))).toBe("300.10");
  });

  test("is none where one line has none: part of a budget is no comparison", () => {
    expect(projectBudget(projectOf("job"), [cad(100), null])).toBe(null);
  });

  test("of a project without lines is none", () => {
    expect(projectBudget(projectOf("job"), [])).toBe(null);
  });
});
