import * as fc from "fast-check";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { ZERO } from "../../lib/decimal.ts";
import { reportContent } from "../../lib/savings/report-content.ts";
import { rowKey } from "../../lib/savings/row-key.ts";
import { savingTotals } from "../../lib/savings/saving-totals.ts";
import { savings } from "../../lib/savings/savings.ts";
import { contentOfStored, storedContent } from "../../lib/savings/stored-content.ts";
import { heldOn } from "../../lib/savings/unrealised-through-time.ts";
import { whySaving } from "../../lib/savings/why-saving.ts";
import { law } from "../support/law.ts";
import { rate, TODAY, valuation } from "../support/price-example.ts";
import { someWorkspace } from "../support/random-workspace.ts";

const ALL = { from: null, until: null, projectId: null, materialId: null, currency: null, day: TODAY };
const withRate = someWorkspace.map((facts) => ({
  ...facts,
  valuation: valuation({ rates: [rate("2026-03-01", "USD", "CAD", "1.3741")] }),
}));

test("a report in another currency adds up in it as at home, to the cent", () => {
  law(
    fc.property(withRate, (facts) => {
      const { rows, currency } = reportContent({ ...ALL, currency: "USD" }, facts);
      expect(currency).toBe("USD");
      for (const { saving, discount, timing, carrying, kind, strictSaving } of rows) {
        expect((saving?.amount.decimalPlaces() ?? 0) <= 2).toBe(true);
        if (saving === null) continue;
        if (kind !== "drawn" && kind !== "held") expect(strictSaving).toEqual(saving);
        if (discount === null || timing === null) continue;
        expect(saving.amount.toFixed()).toBe(
          discount.amount
            .plus(timing.amount)
            .minus(carrying?.amount ?? ZERO)
            .toFixed(),
        );
      }
      const home = reportContent(ALL, facts);
      expect(rows.map((row) => row.saving === null)).toEqual(home.rows.map((row) => row.saving === null));
    }),
  );
});

test("a report that was stored is the same when it is read again", () => {
  law(
    fc.property(withRate, fc.constantFrom("USD", null), (facts, currency) => {
      const content = reportContent({ ...ALL, currency }, facts);
      expect(contentOfStored(JSON.parse(JSON.stringify(storedContent(content))))).toEqual(content);
    }),
  );
});

test("what is held on a day is what the savings as of that day say is unrealised", () => {
  law(
    fc.property(someWorkspace, fc.integer({ min: 0, max: 50 }), (facts, ago) => {
      const day = plusDays(TODAY, -ago);
      const { unrealised } = savings(null, null, day, facts);
      const held = heldOn(day, facts, { projectId: null, materialId: null });
      expect([held.unrealised, held.notKnown]).toEqual([unrealised.saving, unrealised.notKnown]);
    }),
  );
});

test("every row can be explained: its share of each payment is its carrying cost, and what is not known says what would tell", () => {
  law(
    fc.property(someWorkspace, (facts) => {
      for (const row of savings(null, null, TODAY, facts).rows) {
        const why = whySaving(rowKey(row), TODAY, facts);
        if (why === null) throw new Error(`no explanation of ${rowKey(row)}`);
        expect(why.row).toEqual(row);
        const stored = facts.events.some(
          ({ kind, lotId }) => (kind === "stored" || kind === "moved") && lotId === row.lotId,
        );
        if (!stored) expect(why.storage?.amount.toFixed() ?? null).toBe(row.carrying === null ? null : "0");
        expect(why.storage?.amount.isNegative() ?? false).toBe(false);
        const unknown = why.makesKnown.map(({ figure }) => figure);
        const used = row.kind === "drawn" || row.kind === "held";
        expect(unknown.includes("going-at-acquisition")).toBe(used && row.goingAtAcquisition === null);
        expect(unknown.includes("going-at-use")).toBe(used && row.goingAtDraw === null);
        if (row.saving === null) expect(unknown.length).toBeGreaterThan(0);
      }
    }),
  );
});

test("the marks through time end with what is unrealised today, whatever part is asked for", () => {
  law(
    fc.property(someWorkspace, fc.constantFrom(null, "job", "other"), (facts, projectId) => {
      const { rows, marks, currency } = reportContent({ ...ALL, projectId }, facts);
      if (rows.length === 0) return;
      const held = savingTotals(
        rows.filter(({ kind }) => kind === "held"),
        currency,
      );
      expect(marks.at(-1)).toEqual({ on: TODAY, unrealised: held.saving, notKnown: held.notKnown });
    }),
  );
});
