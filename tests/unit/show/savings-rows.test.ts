import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { savingTotals } from "../../../lib/savings/saving-totals.ts";
import type { SavingRow } from "../../../lib/savings/savings-figures.ts";
import { gainText, savingRows, savingRowText, savingTotalsText } from "../../../lib/show/savings-rows.ts";
import { cad } from "../../support/exposure-example.ts";

function row(given: Partial<SavingRow> = {}): SavingRow {
  return {
    lotId: "lot-1",
    eventId: "draw-1",
    materialId: "plywood",
    requirementId: "need-1",
    projectId: "workshop",
    kind: "drawn",
    state: "realised",
    quantity: decimal(10),
    acquiredOn: localDate("2026-01-10"),
    on: localDate("2026-03-01"),
    paid: cad("296.00"),
    goingAtAcquisition: cad("320.00"),
    goingAtDraw: cad("341.50"),
    interpolated: false,
    received: null,
    discount: cad("24.00"),
    timing: cad("21.50"),
    carrying: cad("2.10"),
    saving: cad("43.40"),
    strictSaving: cad("-4.00"),
    source: "special",
    missing: false,
    beforeCarrying: false,
    ...given,
  };
}

test("a loss is said in words, with its minus and its size", () => {
  expect(gainText(cad("-31"), "en-CA")).toEqual({ side: "lost", figure: "-31.00", size: "31.00" });
  expect(gainText(cad("31"), "en-CA")).toEqual({ side: "saved", figure: "+31.00", size: "31.00" });
  expect(gainText(cad("0"), "en-CA").side).toBe("even");
});

test("a saving whose price at the draw is not known says what would make it known", () => {
  const text = savingRowText(
    row({
      state: "not-known",
      goingAtDraw: null,
      saving: null,
      strictSaving: null,
      discount: null,
      timing: null,
    }),
    "en-CA",
  );
  expect([text.saving, text.missing]).toEqual([null, "price-at-draw"]);
});

test("while held the missing price is today's", () => {
  const text = savingRowText(
    row({ kind: "held", state: "not-known", on: null, eventId: null, saving: null }),
    "en-CA",
  );
  expect(text.missing).toBe("price-today");
});

test("a saving stands when only its split is not known", () => {
  const text = savingRowText(row({ goingAtAcquisition: null, discount: null, timing: null }), "en-CA");
  expect([text.saving?.figure, text.missing]).toEqual(["+43.40", "price-at-acquisition"]);
});

test("a cost that is not known is said to be what is missing, never shown as zero", () => {
  const text = savingRowText(row({ state: "not-known", paid: null, saving: null }), "en-CA");
  expect([text.paid, text.missing]).toEqual([null, "paid"]);
});

test("a refund without a rate of its day is said to be what is missing", () => {
  const text = savingRowText(
    row({ kind: "returned", state: "not-known", saving: null, discount: null }),
    "en-CA",
  );
  expect(text.missing).toBe("received");
});

test("what was sold has no split and misses none", () => {
  expect(savingRowText(row({ kind: "sold", discount: null }), "en-CA").missing).toBe(null);
});

test("what was missed at a count is told from what was written off knowingly", () => {
  const gone = { kind: "written-off", discount: null, timing: null } as const;
  expect(savingRowText(row({ ...gone, missing: true }), "en-CA").missedAtCount).toBe(true);
  expect(savingRowText(row(gone), "en-CA").missedAtCount).toBe(false);
});

test("totals name what has no split only when there is such a part", () => {
  const unsplit = row({ goingAtAcquisition: null, discount: null, timing: null });
  expect(savingTotalsText(savingTotals([row()], "CAD"), "en-CA").unsplit).toBe(null);
  expect(savingTotalsText(savingTotals([row(), unsplit], "CAD"), "en-CA").unsplit).toBe("+45.50");
});

test("without a money rate carrying is not known, not zero", () => {
  const text = savingRowText(row({ carrying: null, beforeCarrying: true }), "en-CA");
  expect([text.carrying, text.beforeCarrying]).toEqual([null, true]);
});

test("the newest draw comes first and what is held last", () => {
  const totals = savingTotals([], "CAD");
  const rows = savingRows(
    {
      rows: [
        row({ eventId: null, lotId: "held", on: null, kind: "held", state: "unrealised" }),
        row({ eventId: "old", on: localDate("2026-01-20") }),
        row({ eventId: "new" }),
      ],
      realised: totals,
      unrealised: totals,
      byKind: {},
    },
    "en-CA",
  );
  expect(rows.map((one) => one.key)).toEqual(["lot-1~new", "lot-1~old", "held~need-1"]);
});
