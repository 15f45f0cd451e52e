import type { LocalDate } from "../calendar/local-date.ts";
import { within } from "../calendar/local-date.ts";
import { type Decimal, ONE } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { UnitCode } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";
import { allInPriceIn } from "./all-in-price.ts";
import { lacksImportCharges } from "./foreign-store.ts";
import type { Observation, Terms } from "./observation.ts";
import type { NoPriceReason } from "./offer.ts";
import { bySighting, seenDay } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";

/** What a series is read in. unit: the purchase unit or a measure. "as-seen": each in the currency of its tag. */
export type SeriesTerms = Readonly<{
  from: LocalDate | null;
  until: LocalDate | null;
  unit: UnitCode;
  currency: "home" | "as-seen" | CurrencyCode;
  /** Default "all-in". */
  basis?: "all-in" | "before-tax";
}>;

/** One observation as seen, valued on its own day. price: unrounded, per one of the unit asked for. */
export type SeriesPoint = Readonly<
  {
    observationId: string;
    storeId: string;
    seenOn: LocalDate;
    terms: Terms;
    minQuantity: Decimal | null;
    beforeImportCharges: boolean;
  } & ({ known: true; price: Money } | { known: false; reason: NoPriceReason })
>;

/**
 * Every sighting of a material between two days (both counted), each valued on its own day: its day's tax, discount and
 * rate (R2), so that a point never moves. One that cannot be valued, or not read in the unit, says why; a "none left" is
 * a point without a price. Per unit: price per purchase unit / units in one purchase unit.
 * Units: currency and unit as asked. Rounds: never (divisions that do not end, to 40 digits). Order: by day, then id.
 */
export function priceSeries(
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
  terms: SeriesTerms,
): SeriesPoint[] {
  const inOne = convertFor(material, { value: ONE, unit: material.purchaseUnit }, terms.unit);
  return observations
    .filter(({ materialId, seenOn }) => materialId === material.id && within(seenOn, terms.from, terms.until))
    .sort(bySighting)
    .map((observation): SeriesPoint => {
      const { id, storeId, seenOn, minQuantity, amount } = observation;
      const store = valuation.stores.get(storeId);
      const shown = {
        observationId: id,
        storeId,
        seenOn,
        terms: observation.terms,
        minQuantity,
        beforeImportCharges: store !== undefined && lacksImportCharges(store, valuation),
      };
      if (!inOne.ok) return { ...shown, known: false, reason: "unit-not-convertible" };
      const asSeen = amount?.currency ?? valuation.homeCurrency;
      const currency =
        terms.currency === "home"
          ? valuation.homeCurrency
          : terms.currency === "as-seen"
            ? asSeen
            : terms.currency;
      const valued = allInPriceIn(
        currency,
        observation,
        material,
        valuation,
        seenDay(observation, valuation),
      );
      if (!valued.known) return { ...shown, known: false, reason: valued.reason };
      const price = terms.basis === "before-tax" ? valued.beforeTax : valued.price;
      return { ...shown, known: true, price: money(price.amount.dividedBy(inOne.value), currency) };
    });
}
