import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { SavingRow } from "../../../lib/savings/savings-figures.ts";
import { savingsOfProject, savingsReport } from "../../../lib/savings/savings-report.ts";
import { BOUGHT, cad } from "../../support/stock-example.ts";

function row(projectId: string | null, kind: SavingRow["kind"], saving: number): SavingRow {
  return {
    lotId: "lot",
    eventId: null,
    materialId: "sheet",
    requirementId: null,
    projectId,
    kind,
    state: kind === "held" ? "unrealised" : "realised",
    quantity: decimal(4),
    acquiredOn: BOUGHT,
    on: kind === "held" ? null : BOUGHT,
    paid: cad(80),
    goingAtAcquisition: null,
    goingAtDraw: null,
    interpolated: false,
    received: null,
    discount: null,
    timing: null,
    carrying: null,
    saving: cad(saving),
    strictSaving: null,
    source: "special",
    missing: false,
    beforeCarrying: true,
  };
}
const rows = [
  row("job", "drawn", 22),
  row("job", "held", 5),
  row("other", "drawn", 100),
  row(null, "sold", -7),
];
const report = savingsReport(rows, "CAD");

test("what is held is unrealised, all else realised, and each kind stands by itself", () => {
  expect(report.realised.saving).toEqual(cad(115));
  expect(report.unrealised.saving).toEqual(cad(5));
  expect(Object.entries(report.byKind).map(([kind, totals]) => [kind, totals.saving])).toEqual([
    ["drawn", cad(122)],
    ["sold", cad(-7)],
    ["held", cad(5)],
  ]);
});

test("a project's part has its rows and their totals, nothing of other projects or of none", () => {
  const own = savingsOfProject(report, "job");
  expect(own.rows).toEqual([rows[0], rows[1]]);
  expect([own.realised.saving, own.unrealised.saving]).toEqual([cad(22), cad(5)]);
  expect(Object.keys(own.byKind)).toEqual(["drawn", "held"]);
});

test("a project nothing was saved in has no rows and sums of nothing", () => {
  const none = savingsOfProject(report, "nobody's");
  expect([none.rows, none.realised.rows, none.byKind]).toEqual([[], 0, {}]);
});
