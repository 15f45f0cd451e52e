import { expect, test } from "vitest";
import { decimal, ZERO } from "../../../lib/decimal.ts";
import { savingsReport } from "../../../lib/savings/savings-report.ts";
import { apiSavings, savingsShape } from "../../../lib/show/api-savings.ts";
import { TODAY } from "../../support/price-example.ts";
import { reportExample } from "../../support/report-example.ts";

test("the interface says what made the saving, in lines that add up to its totals", () => {
  const report = savingsReport(reportExample().rows, "CAD");
  const answer = savingsShape.parse(apiSavings(report, { from: null, to: null, asOf: TODAY }));
  const total = (of: "realised" | "unrealised") =>
    answer.breakdown.reduce((all, line) => all.plus(line[of]), ZERO).toFixed(2);
  expect([total("realised"), total("unrealised")]).toEqual([
    answer.totals.realised.saving,
    answer.totals.unrealised.saving,
  ]);
  expect(answer.breakdown.map(({ cause }) => cause)).toEqual([
    "special",
    "timing",
    "returned",
    "sold",
    "written-off",
    "carrying",
  ]);
  expect(decimal(answer.breakdown[0]?.amount ?? 0).toFixed(2)).toBe("240.00");
});
