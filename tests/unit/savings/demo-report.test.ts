import { expect, test } from "vitest";
import { wordedReport } from "../../../app/savings/_report/worded-report.ts";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { ZERO } from "../../../lib/decimal.ts";
import { reportContent } from "../../../lib/savings/report-content.ts";
import { savingBreakdown } from "../../../lib/savings/saving-causes.ts";
import { savingsReport } from "../../../lib/savings/savings-report.ts";
import { demoFacts } from "../../support/demo-facts.ts";
import { REPORT_WORDS } from "../../support/report-example.ts";

const day = localDate("2026-11-25");
const asked = { from: null, until: null, projectId: null, materialId: null, currency: null, day };
const content = reportContent(asked, demoFacts(day));

test("the demo's report adds up and draws its picture", () => {
  const { realised, unrealised } = savingsReport(content.rows, "CAD");
  const lines = savingBreakdown(content.rows, "CAD");
  expect(lines.reduce((all, { amount }) => all.plus(amount.amount), ZERO).toFixed()).toBe(
    realised.saving.amount.plus(unrealised.saving.amount).toFixed(),
  );
  expect(content.marks.length).toBeGreaterThan(2);
  const report = wordedReport(content, REPORT_WORDS, day);
  expect(report.drawings?.wide.marks.length).toBe(content.marks.length);
});
