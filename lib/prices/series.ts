import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { UnitCode } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { Observation, Terms } from "./observation.ts";
import type { NoPriceReason } from "./offer.ts";
import type { Valuation } from "./valuation.ts";

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

export function priceSeries(
  _observations: readonly Observation[],
  _material: Material,
  _valuation: Valuation,
  _terms: SeriesTerms,
): SeriesPoint[] {
  throw new Error("not built yet");
}
