import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { savingTotals } from "../../../lib/savings/saving-totals.ts";
import type { SavingRow } from "../../../lib/savings/savings-figures.ts";
import { BOUGHT, cad } from "../../support/stock-example.ts";

function row(given: Partial<SavingRow> = {}): SavingRow {
  return {
    lotId: "lot",
    eventId: "draw",
    materialId: "sheet",
    requirementId: "a",
    projectId: "job",
    kind: "drawn",
    state: "realised",
    quantity: decimal(4),
    acquiredOn: BOUGHT,
    on: BOUGHT,
    paid: cad(80),
    goingAtAcquisition: cad(96),
    goingAtDraw: cad(104),
    interpolated: false,
    received: null,
    discount: cad(16),
    timing: cad(8),
    carrying: cad(2),
    saving: cad(22),
    strictSaving: cad(-4),
    source: "special",
    missing: false,
    beforeCarrying: false,
    ...given,
  };
}
const unsplit = row({ discount: null, timing: null });
const loss = row({
  kind: "written-off",
  discount: null,
  timing: null,
  saving: cad(-82),
  strictSaving: cad(-82),
});
const notKnown = row({ state: "not-known", discount: null, timing: null, saving: null, strictSaving: null });

describe("totals of savings", () => {
  test("are discount and timing, and what has no split, less carrying", () => {
    expect(savingTotals([row(), unsplit, loss], "CAD")).toMatchObject({
      saving: cad(-38),
      discount: cad(16),
      timing: cad(8),
      unsplit: cad(-56),
      carrying: cad(6),
    });
  });

  test("contain losses in full", () => {
    expect(savingTotals([loss], "CAD").saving).toEqual(cad(-82));
  });

  test("count what is not known, and add none of it", () => {
    expect(savingTotals([row(), notKnown], "CAD")).toMatchObject({
      saving: cad(22),
      carrying: cad(2),
      rows: 2,
      notKnown: 1,
    });
  });

  test("count the rows with a saving and no strict figure apart", () => {
    expect(savingTotals([row(), row({ strictSaving: null }), notKnown], "CAD")).toMatchObject({
      strictSaving: cad(-4),
      strictNotKnown: 1,
    });
  });

  test("of nothing are zero", () => {
    expect(savingTotals([], "CAD")).toMatchObject({ saving: cad(0), rows: 0, notKnown: 0 });
  });
});
