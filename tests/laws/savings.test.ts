import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, ZERO } from "../../lib/decimal.ts";
import { type Money, roundToMinorUnit } from "../../lib/money/money.ts";
import { savings } from "../../lib/savings/savings.ts";
import type { SavingRow } from "../../lib/savings/savings-figures.ts";
import { lotAccount } from "../../lib/stock/lot-account.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { lotState } from "../../lib/stock/lot-state.ts";
import { law } from "../support/law.ts";
import { SHEET, TODAY } from "../support/price-example.ts";
import { someObservation, someWorkspace } from "../support/random-workspace.ts";

const total = (values: readonly Decimal[]) => values.reduce((all, value) => all.plus(value), ZERO);
const amountOf = (value: Money | null) => value?.amount ?? ZERO;
const someDay = fc.integer({ min: 0, max: 50 }).map((ago) => plusDays(TODAY, -ago));

test("every unit of a lot is in one row, or free, or drawn for nobody", () => {
  law(
    fc.property(someWorkspace, someDay, (facts, day) => {
      const { rows } = savings(null, null, day, facts);
      for (const lot of facts.lots) {
        const own = rows.filter((row) => row.lotId === lot.id);
        const { acquired, found, free, drawnForNone } = lotState(lot, facts.events, day);
        expect(total([...own.map((row) => row.quantity), free, drawnForNone]).toFixed()).toBe(
          acquired.plus(found).toFixed(),
        );
      }
      const keys = rows.map((row) => row.eventId ?? `${row.lotId} ${row.requirementId}`);
      expect(new Set(keys).size).toBe(keys.length);
    }),
  );
});

test("what rows cost, what is free and what was drawn for nobody is what the lot cost", () => {
  law(
    fc.property(someWorkspace, someDay, (facts, day) => {
      const { rows } = savings(null, null, day, facts);
      for (const lot of facts.lots.filter(({ orderedOn }) => orderedOn <= day)) {
        const cost = lotCost(lot, SHEET, facts.valuation, day);
        if (!cost.known) throw new Error("the lots of this law are all of a known cost");
        const { withdrawals, holdings } = lotAccount(lot, cost.cost, facts.events, day);
        const forNobody = [
          ...withdrawals.filter(({ event }) => event.kind === "drawn" && event.requirementId === null),
          ...holdings.filter(({ requirementId }) => requirementId === null),
        ];
        const own = rows.filter((row) => row.lotId === lot.id).map((row) => amountOf(row.paid));
        expect(total([...own, ...forNobody.map((part) => part.cost.amount)]).toFixed()).toBe(
          roundToMinorUnit(cost.cost).amount.toFixed(),
        );
      }
    }),
  );
});

describe("a saving", () => {
  const inCents = (value: Money | null) => value === null || value.amount.decimalPlaces() <= 2;

  test("is discount and timing less carrying, exactly, in whole cents", () => {
    law(
      fc.property(someWorkspace, (facts) => {
        for (const row of savings(null, null, TODAY, facts).rows) {
          const { discount, timing, carrying, saving, paid, goingAtDraw } = row;
          expect([discount, timing, carrying, saving, paid, goingAtDraw].every(inCents)).toBe(true);
          if (discount === null || timing === null) continue;
          expect(saving?.amount.toFixed()).toBe(
            discount.amount.plus(timing.amount).minus(amountOf(carrying)).toFixed(),
          );
        }
      }),
    );
  });

  test("adds up in totals: discount, timing and what has no split, less carrying", () => {
    law(
      fc.property(someWorkspace, (facts) => {
        const { realised, unrealised, rows } = savings(null, null, TODAY, facts);
        for (const { saving, discount, timing, unsplit, carrying } of [realised, unrealised])
          expect(saving.amount.toFixed()).toBe(
            discount.amount.plus(timing.amount).plus(unsplit.amount).minus(carrying.amount).toFixed(),
          );
        expect(realised.saving.amount.plus(unrealised.saving.amount).toFixed()).toBe(
          total(rows.map((row) => amountOf(row.saving))).toFixed(),
        );
      }),
    );
  });

  test("once realised on fresh prices stays what it was", () => {
    const settled = (row: SavingRow) =>
      row.state === "realised" && !row.interpolated && row.goingAtDraw !== null;
    law(
      fc.property(someWorkspace, someDay, (facts, day) => {
        const now = new Map(savings(null, null, TODAY, facts).rows.map((row) => [row.eventId, row]));
        for (const row of savings(null, null, day, facts).rows.filter(settled))
          if (row.goingAtAcquisition !== null) expect(now.get(row.eventId)).toEqual(row);
      }),
    );
  });

  test("as of a day is not changed by what is seen after it", () => {
    const later = fc.array(someObservation(["sheet", "board"], { min: -1, max: 9 }), {
      minLength: 1,
      maxLength: 5,
    });
    law(
      fc.property(someWorkspace, later, (facts, more) => {
        const day = plusDays(TODAY, -10);
        const all = { ...facts, observations: [...facts.observations, ...more] };
        expect(savings(null, null, day, all)).toEqual(savings(null, null, day, facts));
      }),
    );
  });
});
