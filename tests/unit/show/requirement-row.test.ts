import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { requirementRow, requirementRows } from "../../../lib/show/requirement-row.ts";
import { cad, DAY, line, offer, take } from "../../support/exposure-example.ts";

test("a row says what was paid each as the locked cost over the locked quantity", () => {
  // 799.20 / 27 = 29.60
  expect(requirementRow(line(), DAY, "en-CA").paidEach).toBe("29.60");
});

test("nothing locked in has no price paid, not a zero", () => {
  const row = requirementRow(line({ lockedIn: decimal(0), lockedCost: cad("0") }), DAY, "en-CA");
  expect(row.paidEach).toBeNull();
});

test("an amount not known stays not known", () => {
  const row = requirementRow(
    line({ costToFinish: null, bestUnitPrice: null, takes: [], uncovered: decimal(31), unpriced: true }),
    DAY,
    "en-CA",
  );
  expect([row.toFinish, row.now, row.uncovered]).toEqual([null, null, "31"]);
});

test("the gauge never shows a full tape while something is open", () => {
  const almost = line({ required: decimal(1000), lockedIn: decimal("999.9"), open: decimal(1) });
  expect(requirementRow(almost, DAY, "en-CA").lockedPercent).toBe(99);
  const more = line({ required: decimal(10), lockedIn: decimal(12), open: decimal(0) });
  expect(requirementRow(more, DAY, "en-CA").lockedPercent).toBe(100);
});

test("the age of a price made of several offers is the oldest one's, and one stale offer marks it", () => {
  const row = requirementRow(
    line({
      takes: [
        take("20"),
        take("11", offer({ observationId: "b", storeId: "kestrel", ageDays: 41, stale: true })),
      ],
    }),
    DAY,
    "en-CA",
  );
  expect(row.now).toMatchObject({ ageDays: 41, stale: true, storeIds: ["mill-road", "kestrel"] });
});

test("what is open comes before what is covered, the earliest needed first", () => {
  const rows = requirementRows(
    [
      line({ requirementId: "covered", open: decimal(0), neededBy: localDate("2026-03-10") }),
      line({ requirementId: "late", neededBy: localDate("2026-09-01") }),
      line({ requirementId: "soon", neededBy: localDate("2026-04-01") }),
    ],
    DAY,
    "en-CA",
  );
  expect(rows.map((row) => row.requirementId)).toEqual(["soon", "late", "covered"]);
});
