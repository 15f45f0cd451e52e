import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { savingsReport } from "../../../lib/savings/savings-report.ts";
import { narrowedSavings, savingsAsked } from "../../../lib/show/savings-asked.ts";
import { percentOfShare, shareOfPercent } from "../../../lib/show/share-typed.ts";
import { rows } from "../../support/saving-example.ts";
import { eventOf } from "../../support/stock-example.ts";

const a = { requirementId: "a" };
const report = savingsReport(
  rows([eventOf("allocated", 6, "2026-01-06", a), eventOf("drawn", 4, "2026-02-25", a)]),
  "CAD",
);

test("what is no day, and what is empty, narrows nothing", () => {
  expect(savingsAsked({ from: "2026-13-40", until: "", project: undefined })).toEqual({
    from: null,
    until: null,
    projectId: null,
    materialId: null,
  });
  expect(savingsAsked({ from: "2026-01-01" }).from).toBe("2026-01-01");
});

test("narrowed to a project, the totals are those of its rows", () => {
  const own = narrowedSavings(report, { projectId: "job", materialId: null });
  expect([own.rows.length, own.realised.saving]).toEqual([report.rows.length, report.realised.saving]);
  const other = narrowedSavings(report, { projectId: "other", materialId: null });
  expect([other.rows, other.realised.saving.amount.toFixed()]).toEqual([[], "0"]);
});

test("narrowed to another material nothing is left", () => {
  expect(narrowedSavings(report, { projectId: "job", materialId: "stud" }).rows).toEqual([]);
  expect(narrowedSavings(report, { projectId: null, materialId: "sheet" }).rows).toEqual(report.rows);
});

test("a percentage typed is a share of one, and what is no number stays as typed", () => {
  expect([shareOfPercent("50"), shareOfPercent("12.5"), shareOfPercent("half")]).toEqual([
    "0.5",
    "0.125",
    "half",
  ]);
});

test("a share of one reads as a percentage", () => {
  expect(percentOfShare(decimal("0.5"), "en-CA")).toBe("50%");
});
