import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { Money } from "../money/money.ts";
import type { Observation } from "./observation.ts";
import type { AllInPrice, GoingPrice } from "./offer.ts";
import type { Valuation } from "./valuation.ts";

/** open: still to buy, in purchase units; openUsed: so many of them may be used ones. lastPaid: the newest lot's unit cost, home currency. */
export type Need = Readonly<{ open: Decimal; openUsed: Decimal; lastPaid: Money | null }>;

/** difference: this price less the other (negative: cheaper here), unrounded. percent: of the other. */
export type Against = Readonly<{ other: Money; difference: Money; percent: Decimal | null }>;

/** A just logged price beside everything known. Money: home currency, all in, per purchase unit unless it says total. */
export type WhatItMeans = Readonly<{
  price: AllInPrice;
  beforeImportCharges: boolean;
  /** Best unit price elsewhere for the quantity this price would cover (at least one step). */
  againstBestElsewhere: Against | null;
  againstGoing: Against | null;
  going: GoingPrice;
  againstLastPaid: Against | null;
  /** Whole months since a price as low or lower was seen. null: none as low in all that is known, or nothing else is known. */
  lowestInMonths: number | null;
  /** True when no earlier price was as low; knownMonths says how far back that reaches. */
  lowestEver: boolean;
  knownMonths: number;
  /** Earlier prices it was held against. */
  observations: number;
  /** So many of the open quantity this offer alone can cover. */
  covers: Decimal;
  /** Totals for `covers`, rounded to the minor unit: bought here, and at the best offers elsewhere. null: not possible there. */
  totalHere: Money | null;
  totalElsewhere: Money | null;
  /** totalHere - totalElsewhere: negative is under the best offer elsewhere. */
  totalDifference: Money | null;
}>;

export function whatItMeans(
  _day: LocalDate,
  _logged: Observation,
  _others: readonly Observation[],
  _material: Material,
  _valuation: Valuation,
  _need: Need,
): WhatItMeans {
  throw new Error("not built yet");
}
