import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, ONE, ZERO } from "../../lib/decimal.ts";
import { coverWithAlternatives } from "../../lib/exposure/cover-with-alternatives.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import { materialOf } from "../../lib/exposure/exposure-facts.ts";
import { type Money, roundToMinorUnit } from "../../lib/money/money.ts";
import { goingPriceOn } from "../../lib/prices/going-price.ts";
import { carryingCost } from "../../lib/stock/carrying.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { law } from "../support/law.ts";
import { offerAt, SHEET, TODAY } from "../support/price-example.ts";
import { scaled, someObservation, someWorkspace } from "../support/random-workspace.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../support/stock-example.ts";

const total = (values: readonly Decimal[]) => values.reduce((all, value) => all.plus(value), ZERO).toFixed();
const amounts = (values: readonly (Money | null)[]) => total(values.map((value) => value?.amount ?? ZERO));

describe("the shares of what is bought together", () => {
  test("add up to its cost, to the cent, and to its quantities", () => {
    law(
      fc.property(someWorkspace, (facts) => {
        for (const { lines, pools } of exposure(TODAY, facts).projects) {
          for (const pool of pools) {
            const own = lines.filter((line) => pool.requirementIds.includes(line.requirementId));
            expect(amounts(own.map((line) => line.costToFinish))).toBe(pool.cost.amount.toFixed());
            expect(total(own.map((line) => line.open))).toBe(pool.quantity.toFixed());
            const taken = (takes: readonly { quantity: Decimal }[]) => takes.map((take) => take.quantity);
            expect(decimal(total(own.flatMap((line) => taken(line.takes)))).toFixed(20)).toBe(
              decimal(total(taken(pool.takes))).toFixed(20),
            );
          }
        }
      }),
    );
  });

  test("add up to the totals, and totals to the workspace's", () => {
    law(
      fc.property(someWorkspace, (facts) => {
        const { projects, totals } = exposure(TODAY, facts);
        for (const { lines, totals: own } of projects) {
          expect(amounts(lines.map((line) => line.costToFinish))).toBe(own.costToFinish.amount.toFixed());
          expect(amounts(lines.map((line) => line.lockedCost))).toBe(own.lockedCost.amount.toFixed());
        }
        expect(amounts(projects.map((one) => one.totals.estimateAtCompletion))).toBe(
          totals.estimateAtCompletion.amount.toFixed(),
        );
      }),
    );
  });
});

test("a limited offer is given out no more than once in all", () => {
  law(
    fc.property(someWorkspace, (facts) => {
      const taken = new Map<string, Decimal>();
      for (const { pools } of exposure(TODAY, facts).projects)
        for (const { offer, quantity } of pools.flatMap((pool) => pool.takes))
          taken.set(offer.observationId, (taken.get(offer.observationId) ?? ZERO).plus(quantity));
      for (const { id, maxQuantity } of facts.observations)
        if (maxQuantity !== null) expect(taken.get(id)?.greaterThan(maxQuantity) ?? false).toBe(false);
    }),
  );
});

test("locking in more of a need never makes finishing it cost more", () => {
  const need = (quantity: number) => [needOf("a", revisionOf(quantity)), needOf("b", revisionOf(7))];
  const locked = (quantity: number) => eventOf("allocated", quantity, "2026-01-06", { requirementId: "a" });
  law(
    fc.property(
      fc.array(someObservation(["sheet"]), { maxLength: 10 }),
      fc.integer({ min: 2, max: 60 }),
      fc.integer({ min: 1, max: 59 }),
      (observations, quantity, more) => {
        fc.pre(more <= quantity);
        const cost = (events: Parameters<typeof factsOf>[0]) =>
          exposure(
            TODAY,
            factsOf({ requirements: need(quantity), lots: [lotOf(100, 900)], observations, ...events }),
          ).totals.costToFinish.amount;
        expect(
          cost({ events: [locked(more)] }).lessThanOrEqualTo(cost({ events: [locked(more - 1 || 1)] })),
        ).toBe(true);
        expect(cost({ events: [locked(more)] }).lessThanOrEqualTo(cost({}))).toBe(true);
      },
    ),
    { numRuns: 300 },
  );
});

test("what is seen after a day changes nothing of it", () => {
  law(
    fc.property(
      someWorkspace,
      fc.array(someObservation(["sheet", "board"], { min: -1, max: 19 }), { minLength: 1, maxLength: 5 }),
      (facts, later) => {
        const day = plusDays(TODAY, -20);
        const more = { ...facts, observations: [...facts.observations, ...later] };
        expect(exposure(day, more)).toEqual(exposure(day, facts));
      },
    ),
  );
});

test("when everything costs so many times as much, so do all results before they are rounded", () => {
  law(
    fc.property(someWorkspace, fc.integer({ min: 2, max: 1000 }), (facts, factor) => {
      const dear = scaled(facts, factor);
      const bought = (of: typeof facts) =>
        exposure(TODAY, of).projects.flatMap(({ pools }) => pools.flatMap((pool) => pool.takes));
      expect(bought(dear).map((take) => [take.offer.observationId, take.cost.amount.toFixed(20)])).toEqual(
        bought(facts).map((take) => [take.offer.observationId, take.cost.amount.times(factor).toFixed(20)]),
      );
      for (const id of facts.materials.keys()) {
        const going = (of: typeof facts) =>
          goingPriceOn(TODAY, of.observations, materialOf(of, id), of.valuation);
        const [cheap, dearly] = [going(facts), going(dear)];
        expect(dearly.known && dearly.price.amount.toFixed(20)).toBe(
          cheap.known && cheap.price.amount.times(factor).toFixed(20),
        );
      }
      for (const [index, lot] of facts.lots.entries()) {
        const held = (of: typeof facts, one = of.lots[index] ?? lot) => {
          const cost = lotCost(one, SHEET, of.valuation, TODAY);
          if (!cost.known) return null;
          return { cost: cost.cost, carrying: carryingCost(cost.payments, of.moneyRates, TODAY, "CAD") };
        };
        const [cheap, dearly] = [held(facts), held(dear)];
        expect(dearly?.cost.amount.toFixed(20)).toBe(cheap?.cost.amount.times(factor).toFixed(20));
        expect(dearly?.carrying?.amount.toFixed(20)).toBe(cheap?.carrying?.amount.times(factor).toFixed(20));
      }
    }),
  );
});

describe("the least cost with an accepted alternative", () => {
  const some = (materialId: string) =>
    fc
      .record({
        cents: fc.integer({ min: 1, max: 400 }),
        min: fc.integer({ min: 1, max: 6 }),
        max: fc.option(fc.integer({ min: 1, max: 14 })),
        pack: fc.integer({ min: 1, max: 4 }),
      })
      .map(({ cents, min, max, pack }) =>
        offerAt(
          `${cents}e-2`,
          { min: min * pack, max: max === null ? null : Math.max(min, max) * pack, pack },
          { materialId },
        ),
      );

  /** Every number of each offer tried, in cents by parts covered; a part is 1/numerator of a required unit. */
  function byHand(offers: readonly (readonly [ReturnType<typeof offerAt>, number])[], need: number): number {
    let best: (number | undefined)[] = [0];
    for (const [offer, parts] of offers) {
      const next = [...best];
      const cents = offer.price.amount.times(100).toNumber();
      for (const [covered, cost] of best.entries()) {
        if (cost === undefined) continue;
        const most = Math.min(offer.maxQuantity?.toNumber() ?? 400, 400);
        for (let n = offer.minQuantity.toNumber(); n <= most; n += offer.packSize.toNumber()) {
          const reached = Math.min(need, covered + n * parts);
          next[reached] = Math.min(next[reached] ?? Number.POSITIVE_INFINITY, cost + n * cents);
          if (covered + n * parts >= need) break;
        }
      }
      best = next;
    }
    return best[need] ?? Number.POSITIVE_INFINITY;
  }

  test("is never beaten by trying everything", () => {
    law(
      fc.property(
        fc.array(some("sheet"), { maxLength: 3 }),
        fc.array(some("other"), { minLength: 1, maxLength: 3 }),
        fc.constantFrom(
          ["1", 1, 1],
          ["2", 2, 1],
          ["1.5", 3, 2],
          ["0.75", 3, 4],
          ["0.4", 2, 5],
        ) as fc.Arbitrary<[string, number, number]>,
        fc.integer({ min: 1, max: 30 }),
        (own, other, [factor, perOwn, perOther], quantity) => {
          const cover = coverWithAlternatives(
            own,
            [{ offers: other, factor: decimal(factor) }],
            decimal(quantity),
            {
              step: ONE,
              used: ZERO,
              currency: "CAD",
            },
          );
          const least = byHand(
            [...own.map((one) => [one, perOwn] as const), ...other.map((one) => [one, perOther] as const)],
            quantity * perOwn,
          );
          fc.pre(Number.isFinite(least));
          expect(cover.uncovered.toNumber()).toBe(0);
          expect(cover.cost.amount.times(100).toNumber()).toBe(least);
          const cost = cover.takes.reduce((sum, take) => sum.plus(take.cost.amount), ZERO);
          expect(roundToMinorUnit({ amount: cost, currency: "CAD" })).toEqual(cover.cost);
        },
      ),
      { numRuns: 400 },
    );
  });
});
