import type { LocalDate } from "../calendar/local-date.ts";
import { Decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import type { Observation } from "../prices/observation.ts";
import type { Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { lotState } from "./lot-state.ts";
import { unitCost } from "./unit-cost.ts";

/**
 * A lot whose store asks less now than it cost. paid, offered: one purchase unit, all in, home currency, unrounded. quantity: of what
 * is on hand, what the offer covers. money: what asking is worth. adjustUntil, returnUntil: last days to ask for the difference,
 * or to hand it back and buy again; null: past, or not said. lastDay: the later of the two.
 */
export type PriceFell = Readonly<{
  lotId: string;
  materialId: string;
  storeId: string;
  offer: Offer;
  paid: Money;
  offered: Money;
  quantity: Decimal;
  money: Money;
  adjustUntil: LocalDate | null;
  returnUntil: LocalDate | null;
  lastDay: LocalDate;
}>;

/** What it is looked for in. observations: at least those in force on the day. */
export type PriceFellFacts = Readonly<{
  valuation: Valuation;
  materials: ReadonlyMap<string, Material>;
  observations: readonly Observation[];
  lots: readonly Lot[];
  events: readonly StockEvent[];
}>;

function onOrAfter(last: LocalDate | null, day: LocalDate): LocalDate | null {
  return last !== null && last >= day ? last : null;
}

/** The offer worth most for what is on hand: never a used one against a new lot, never one of unknown import charges. */
function bestFor(offers: readonly Offer[], paid: Money, onHand: Decimal): PriceFellPart | null {
  let best: PriceFellPart | null = null;
  for (const offer of offers) {
    if (offer.terms === "used" || offer.beforeImportCharges || offer.minQuantity.greaterThan(onHand))
      continue;
    const quantity = Decimal.min(onHand, offer.maxQuantity ?? onHand);
    const worth = paid.amount.minus(offer.price.amount).times(quantity);
    if (!worth.greaterThan(0) || (best !== null && worth.lessThanOrEqualTo(best.worth))) continue;
    best = { offer, quantity, worth };
  }
  return best;
}
type PriceFellPart = Readonly<{ offer: Offer; quantity: Decimal; worth: Decimal }>;

/**
 * "The price fell since you bought": for every lot of which something is still on hand, within its return or its price-adjustment
 * days, the offer in force at the same store that is worth most for the quantity on hand.
 *     money = (unit cost - price offered) x quantity on hand (no more than the offer covers)
 * Both all in, without charges per order, as of the day. Never another store's offer, never after the last day (it counts), never
 * of what is on order or of salvage. Units: home currency; purchase units. Rounds: money once, half up. Order: the last day first.
 * Source: rules.md R4, R5, R12.
 */
export function priceFell(day: LocalDate, facts: PriceFellFacts): PriceFell[] {
  const { valuation, materials, lots, events, observations } = facts;
  const found = lots.flatMap((lot): PriceFell[] => {
    const adjustUntil = onOrAfter(lot.agreed.adjustableUntil, day);
    const returnUntil = onOrAfter(lot.agreed.returnableUntil, day);
    const material = materials.get(lot.materialId);
    const lastDay = [adjustUntil, returnUntil]
      .filter((one) => one !== null)
      .sort()
      .at(-1);
    if (lot.storeId === null || material === undefined || lastDay === undefined || lot.orderedOn > day)
      return [];
    const { received, found: foundMore, gone } = lotState(lot, events, day);
    const onHand = Decimal.min(lot.quantity, received.plus(foundMore).minus(gone));
    const paid = onHand.greaterThan(0) ? unitCost(lot, material, valuation, day) : null;
    if (paid === null) return [];
    const here = observations.filter(({ storeId }) => storeId === lot.storeId);
    const best = bestFor(offersOn(day, here, material, valuation).offers, paid, onHand);
    if (best === null) return [];
    const worth = roundToMinorUnit(money(best.worth, paid.currency));
    if (worth.amount.isZero()) return [];
    return [
      {
        lotId: lot.id,
        materialId: lot.materialId,
        storeId: lot.storeId,
        offer: best.offer,
        paid,
        offered: best.offer.price,
        quantity: best.quantity,
        money: worth,
        adjustUntil,
        returnUntil,
        lastDay,
      },
    ];
  });
  return found.sort((a, b) => (a.lastDay < b.lastDay ? -1 : a.lastDay > b.lastDay ? 1 : 0));
}
