import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Decimal, decimal, ONE, ZERO } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { boughtAlone } from "../../lib/prices/bought-alone.ts";
import { cheapestCover } from "../../lib/prices/cheapest-cover.ts";
import type { Offer } from "../../lib/prices/offer.ts";
import { orderCharges } from "../../lib/prices/order-charges.ts";
import { law } from "../support/law.ts";
import { offerAt } from "../support/price-example.ts";

const STORES = ["a", "b", "c", "d"];
const TERMS = { step: ONE, used: ZERO, currency: "CAD" } as const;

/** Offers of four stores, each store with a delivery charge or none, waived from an amount on or never. */
function market(waived: boolean) {
  const charge = fc.option(
    fc.record({ cents: fc.integer({ min: 100, max: 20000 }), freeFrom: fc.integer({ min: 50, max: 900 }) }),
  );
  const offer = fc.record({
    store: fc.integer({ min: 0, max: 3 }),
    cents: fc.integer({ min: 100, max: 3000 }),
    max: fc.option(fc.integer({ min: 1, max: 30 })),
    pack: fc.constantFrom(1, 1, 1, 5),
    stale: fc.integer({ min: 0, max: 4 }).map((odds) => odds === 0),
  });
  return fc
    .tuple(fc.tuple(charge, charge, charge, charge), fc.array(offer, { minLength: 1, maxLength: 6 }))
    .map(([charges, offers]) =>
      offers.map(({ store, cents, max, pack, stale }): Offer => {
        const delivery = charges[store] ?? null;
        const most = max === null ? null : Math.max(pack, max - (max % pack));
        const orderChargesOfStore =
          delivery === null
            ? []
            : [
                {
                  name: "delivery",
                  amount: money(decimal(delivery.cents).dividedBy(100), "CAD"),
                  freeFrom: waived ? money(delivery.freeFrom, "CAD") : null,
                },
              ];
        return offerAt(
          decimal(cents).dividedBy(100),
          { min: pack, max: most, pack },
          { storeId: STORES[store] ?? "a", stale, orderCharges: orderChargesOfStore },
        );
      }),
    );
}

/** The least total over every choice of stores that covers as much, and of it as much by fresh offers. */
function overEveryChoice(offers: readonly Offer[], quantity: number): Decimal {
  const all = cheapestCover(offers, decimal(quantity), TERMS);
  const freshly = (cover: typeof all) => {
    const fresh = cover.takes.filter(({ offer }) => !offer.stale).map((take) => take.quantity);
    return Math.min(quantity, fresh.reduce((total, some) => total.plus(some), ZERO).toNumber());
  };
  let least: Decimal | null = null;
  for (let choice = 0; choice < 2 ** STORES.length; choice += 1) {
    const some = offers.filter(({ storeId }) => ((choice >> STORES.indexOf(storeId)) & 1) === 1);
    const cover = cheapestCover(some, decimal(quantity), TERMS);
    if (cover.uncovered.greaterThan(all.uncovered) || freshly(cover) < freshly(all)) continue;
    const charges = orderCharges(cover.takes, "CAD").map(({ amount }) => amount.amount);
    const total = charges.reduce((sum, charge) => sum.plus(charge), cover.cost.amount);
    if (least === null || total.lessThan(least)) least = total;
  }
  return least ?? ZERO;
}

test("bought alone, with charges nobody waives, costs what trying every choice of stores costs", () => {
  law(
    fc.property(market(false), fc.integer({ min: 1, max: 60 }), (offers, quantity) => {
      const { total } = boughtAlone(offers, decimal(quantity), TERMS);
      expect(total.amount.toFixed()).toBe(overEveryChoice(offers, quantity).toFixed());
    }),
    { numRuns: 500 },
  );
});

test("bought alone never costs more than the best choice of stores, also where an amount waives the charge", () => {
  law(
    fc.property(market(true), fc.integer({ min: 1, max: 60 }), (offers, quantity) => {
      const { total } = boughtAlone(offers, decimal(quantity), TERMS);
      expect(total.amount.lessThanOrEqualTo(overEveryChoice(offers, quantity))).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test("bought alone covers as much as without charges, and its total is cover and charges", () => {
  law(
    fc.property(market(true), fc.integer({ min: 1, max: 60 }), (offers, quantity) => {
      const { cover, charges, total } = boughtAlone(offers, decimal(quantity), TERMS);
      expect(cover.uncovered.toFixed()).toBe(
        cheapestCover(offers, decimal(quantity), TERMS).uncovered.toFixed(),
      );
      const due = charges.reduce((sum, { amount }) => sum.plus(amount.amount), cover.cost.amount);
      expect(due.toFixed()).toBe(total.amount.toFixed());
    }),
    { numRuns: 300 },
  );
});
