import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Decimal, ZERO } from "../../lib/decimal.ts";
import { savingBreakdown, savingCauses } from "../../lib/savings/saving-causes.ts";
import { savingTotals } from "../../lib/savings/saving-totals.ts";
import { savings } from "../../lib/savings/savings.ts";
import { keyOfRow, SAVING_VIEWS, savingsBy } from "../../lib/savings/savings-by.ts";
import { savingsThroughTime } from "../../lib/savings/savings-through-time.ts";
import { law } from "../support/law.ts";
import { TODAY } from "../support/price-example.ts";
import { someWorkspace } from "../support/random-workspace.ts";

const total = (values: readonly Decimal[]) => values.reduce((all, value) => all.plus(value), ZERO);

/** Any choice of rows: a filter, whatever it asks for. */
const someRows = fc
  .tuple(someWorkspace, fc.infiniteStream(fc.boolean()))
  .map(([facts, keep]) => savings(null, null, TODAY, facts).rows.filter(() => keep.next().value === true));

test("what made a saving adds up to it, row by row and for any choice of rows, to the cent", () => {
  law(
    fc.property(someRows, (rows) => {
      for (const row of rows)
        expect(total(savingCauses(row).map(({ amount }) => amount.amount)).toFixed()).toBe(
          (row.saving?.amount ?? ZERO).toFixed(),
        );
      const lines = savingBreakdown(rows, "CAD");
      for (const [of, kept] of [
        ["realised", rows.filter(({ kind }) => kind !== "held")],
        ["unrealised", rows.filter(({ kind }) => kind === "held")],
        ["amount", rows],
      ] as const)
        expect(total(lines.map((line) => line[of].amount)).toFixed()).toBe(
          savingTotals(kept, "CAD").saving.amount.toFixed(),
        );
    }),
  );
});

test("every view of any choice of rows has each row once and adds up to the total, strict figures and counts too", () => {
  law(
    fc.property(someRows, fc.constantFrom(...SAVING_VIEWS), (rows, view) => {
      const groups = savingsBy(rows, (row) => keyOfRow(view, row, (id) => `origin of ${id}`), "CAD");
      expect(groups.flatMap((group) => group.rows)).toHaveLength(rows.length);
      expect(new Set(groups.map(({ key }) => key)).size).toBe(groups.length);
      const all = savingTotals(rows, "CAD");
      for (const field of ["saving", "strictSaving", "carrying", "unsplit"] as const)
        expect(
          total(
            groups.flatMap(({ realised, unrealised }) => [realised[field].amount, unrealised[field].amount]),
          ),
        ).toEqual(all[field].amount);
      for (const field of ["rows", "notKnown", "strictNotKnown"] as const)
        expect(groups.reduce((sum, one) => sum + one.realised[field] + one.unrealised[field], 0)).toBe(
          all[field],
        );
    }),
  );
});

test("savings heaped up through time end at the realised saving, losses below nothing and gains above it", () => {
  law(
    fc.property(someRows, (rows) => {
      const points = savingsThroughTime(rows, "CAD");
      const realised = savingTotals(
        rows.filter(({ kind }) => kind !== "held"),
        "CAD",
      );
      expect((points.at(-1)?.net.amount ?? ZERO).toFixed()).toBe(realised.saving.amount.toFixed());
      expect(points.map(({ on }) => on)).toEqual([...new Set(points.map(({ on }) => on))].sort());
      for (const { saved, lost, net } of points) {
        expect([saved.amount.isNegative(), lost.amount.greaterThan(0)]).toEqual([false, false]);
        expect(net.amount.toFixed()).toBe(saved.amount.plus(lost.amount).toFixed());
      }
    }),
  );
});
