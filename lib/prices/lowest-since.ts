import type { LocalDate } from "../calendar/local-date.ts";
import { wholeMonths } from "../calendar/whole-months.ts";
import { roundHalfUp } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { valuedAsSeen } from "./all-in-price.ts";
import { lacksImportCharges } from "./foreign-store.ts";
import type { Observation } from "./observation.ts";
import { seenDay } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";

/** How a price stands among earlier ones. See `lowestSince`. */
export type Lowest = Readonly<{
  /** Whole months since a price as low or lower was seen. null: none as low in all that is known. */
  lowestInMonths: number | null;
  /** No earlier price was as low, and there are earlier ones. */
  lowestEver: boolean;
  /** Whole months the earlier prices reach back. */
  knownMonths: number;
  /** Earlier prices it was held against. */
  observations: number;
}>;

/** Places beyond which a difference is the dust of a division. */
const PLACES = 20;

/**
 * How long it is since a material was seen as cheap: the whole months from the newest earlier sighting at this price or
 * under it to the day of the logged one. Each price is valued on its own day (R2), home currency, all in, per purchase
 * unit. Counted: earlier days, every store and terms, but used only beside used, and no foreign price before import
 * charges. Rounds: months down.
 */
export function lowestSince(
  logged: Observation,
  others: readonly Observation[],
  material: Material,
  valuation: Valuation,
): Lowest {
  const own = valuedAsSeen(logged, material, valuation);
  const on = seenDay(logged, valuation);
  let observations = 0;
  let first: LocalDate | null = null;
  let asLow: LocalDate | null = null;
  for (const other of others) {
    const store = valuation.stores.get(other.storeId);
    if (other.id === logged.id || other.materialId !== material.id || other.seenOn >= on) continue;
    if (store === undefined || lacksImportCharges(store, valuation)) continue;
    if ((other.terms === "used") !== (logged.terms === "used")) continue;
    const price = valuedAsSeen(other, material, valuation);
    if (!price.known || !own.known) continue;
    observations += 1;
    if (first === null || other.seenOn < first) first = other.seenOn;
    const dearer = roundHalfUp(price.price.amount, PLACES).greaterThan(roundHalfUp(own.price.amount, PLACES));
    if (!dearer && (asLow === null || other.seenOn > asLow)) asLow = other.seenOn;
  }
  return {
    lowestInMonths: asLow === null ? null : wholeMonths(asLow, on),
    lowestEver: observations > 0 && asLow === null,
    knownMonths: first === null ? 0 : wholeMonths(first, on),
    observations,
  };
}
