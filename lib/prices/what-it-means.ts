import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ZERO } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, subtract, sum } from "../money/money.ts";
import { allInPrice } from "./all-in-price.ts";
import { cheapestCover } from "./cheapest-cover.ts";
import { lacksImportCharges } from "./foreign-store.ts";
import { goingPriceOn } from "./going-price.ts";
import { type Lowest, lowestSince } from "./lowest-since.ts";
import type { Observation } from "./observation.ts";
import type { AllInPrice, Cover, GoingPrice, Offer } from "./offer.ts";
import { offersOn } from "./offers.ts";
import type { Valuation } from "./valuation.ts";

/** open: still to buy, in purchase units; openUsed: so many of them may be used ones. lastPaid: the newest lot's unit cost, home currency. */
export type Need = Readonly<{ open: Decimal; openUsed: Decimal; lastPaid: Money | null }>;

/** difference: this price less the other (negative: cheaper here), unrounded. percent: of the other. */
export type Against = Readonly<{ other: Money; difference: Money; percent: Decimal | null }>;

/** A just logged price beside everything known. Money: home currency, all in, per purchase unit unless it says total. */
export type WhatItMeans = Lowest &
  Readonly<{
    price: AllInPrice;
    beforeImportCharges: boolean;
    /** Against the best offers of other stores, for `covers` (for the offer's minimum where nothing is open). */
    againstBestElsewhere: Against | null;
    againstGoing: Against | null;
    /** Without the logged price itself. */
    going: GoingPrice;
    againstLastPaid: Against | null;
    /** So many of the open quantity this offer alone can cover. */
    covers: Decimal;
    /** Totals for `covers`, rounded to the minor unit: bought here, and at the best offers elsewhere. null: not possible there. */
    totalHere: Money | null;
    totalElsewhere: Money | null;
    /** totalHere - totalElsewhere: negative is under the best offer elsewhere. */
    totalDifference: Money | null;
  }>;

function against(price: AllInPrice, other: Money | null): Against | null {
  if (!price.known || other === null) return null;
  const difference = subtract(price.price, other);
  const percent = other.amount.isZero() ? null : difference.amount.dividedBy(other.amount).times(HUNDRED);
  return { other, difference, percent };
}

/** What a cover costs per unit of the quantity asked for, unrounded; null: it does not cover all of it. */
function perUnit(cover: Cover): Money | null {
  if (!cover.uncovered.isZero() || cover.takes.length === 0) return null;
  const { currency } = cover.cost;
  const total = sum(
    cover.takes.map(({ cost }) => cost),
    currency,
  );
  return money(total.amount.dividedBy(cover.quantity), currency);
}

function least(...values: readonly (Decimal | null)[]): Decimal {
  const known = values.filter((value) => value !== null);
  return known.reduce((smallest, value) => (value.lessThan(smallest) ? value : smallest), known[0] ?? ZERO);
}

/** How much of the need an offer can serve; none before import charges are confirmed (R3). */
function coverable(offer: Offer | undefined, need: Need): Decimal {
  if (offer === undefined || offer.beforeImportCharges) return ZERO;
  return least(need.open, offer.maxQuantity, offer.terms === "used" ? need.openUsed : null);
}

/**
 * What a just logged price means on a day: against the best offers of other stores and the going price without it, against
 * what was last paid, since when nothing was as low, and what covering the open need here costs beside covering it
 * elsewhere. Pure figures; words stand elsewhere. Formulas: `Against`, `lowestSince`, `cheapestCover` (R6), `goingPriceOn`
 * (R7). lowest: where it was told already (the phone has no history). Units: home currency, all in, purchase units. Rounds: the totals once, half up; nothing else. Not known: null.
 */
export function whatItMeans(
  day: LocalDate,
  logged: Observation,
  others: readonly Observation[],
  material: Material,
  valuation: Valuation,
  need: Need,
  lowest?: Lowest,
): WhatItMeans {
  const before = others.filter(({ id }) => id !== logged.id);
  const { offers } = offersOn(day, [...before, logged], material, valuation);
  const here = offers.find(({ observationId }) => observationId === logged.id);
  const elsewhere = offers.filter(({ storeId }) => storeId !== logged.storeId);
  const price = allInPrice(logged, material, valuation, day);
  const store = valuation.stores.get(logged.storeId);
  const going = goingPriceOn(day, before, material, valuation);

  const step = purchaseStep(material.purchaseUnit);
  const covers = coverable(here, need);
  const quantity = covers.isZero() ? (here?.minQuantity ?? step) : covers;
  const terms = { step, used: least(need.openUsed, quantity), currency: valuation.homeCurrency };
  const there = cheapestCover(elsewhere, quantity, terms);
  const own = here === undefined || covers.isZero() ? null : cheapestCover([here], covers, terms);
  const totalHere = own === null ? null : own.cost;
  const totalElsewhere = own === null || perUnit(there) === null ? null : there.cost;
  return {
    price,
    beforeImportCharges: store !== undefined && lacksImportCharges(store, valuation),
    againstBestElsewhere: against(price, perUnit(there)),
    going,
    againstGoing: against(price, going.known ? going.price : null),
    againstLastPaid: against(price, need.lastPaid),
    ...(lowest ?? lowestSince(logged, before, material, valuation)),
    covers,
    totalHere,
    totalElsewhere,
    totalDifference:
      totalHere === null || totalElsewhere === null ? null : subtract(totalHere, totalElsewhere),
  };
}
