import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ONE } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Observation, Terms } from "../prices/observation.ts";
import type { LeftOutReason } from "../prices/offer.ts";
import type { OffersOfDay } from "../prices/offers.ts";
import { dayText } from "./day-text.ts";
import { figureText, quantityText } from "./money-text.ts";
import type { QuantityText } from "./offer-row.ts";

/** A price exactly as it stood on the tag, as text. amount null: none left. */
export type SeenPrice = Readonly<{
  id: string;
  day: string;
  ageDays: number;
  storeId: string;
  terms: Terms;
  amount: string | null;
  currency: CurrencyCode | null;
  /** What the amount buys; null: one. */
  quantity: QuantityText | null;
  unit: PurchaseUnit;
  taxIncluded: boolean;
  minimum: string | null;
  maximum: string | null;
  packSize: string | null;
  from: string | null;
  until: string | null;
  fees: readonly string[];
  note: string | null;
}>;

const LEAST_PLACES = 2;
const MOST_PLACES = 6;

/** An observation for reading. Rounds: never; amounts keep every place they were typed with, at most six. */
export function seenPrice(seen: Observation, day: LocalDate, locale: string): SeenPrice {
  const quantity = (value: Decimal | null) => (value === null ? null : quantityText(value, locale));
  const dayOrNull = (value: LocalDate | null) => (value === null ? null : dayText(value, locale));
  const { amount, per } = seen;
  return {
    id: seen.id,
    day: dayText(seen.seenOn, locale),
    ageDays: daysBetween(seen.seenOn, day),
    storeId: seen.storeId,
    terms: seen.terms,
    amount: amount === null ? null : figureText(amount.amount, locale, LEAST_PLACES, MOST_PLACES),
    currency: amount?.currency ?? null,
    quantity: per.quantity.equals(ONE)
      ? null
      : { text: quantityText(per.quantity, locale), exact: per.quantity.toFixed() },
    unit: per.unit,
    taxIncluded: seen.taxIncluded,
    minimum: quantity(seen.minQuantity),
    maximum: quantity(seen.maxQuantity),
    packSize: quantity(seen.packSize),
    from: dayOrNull(seen.from),
    until: dayOrNull(seen.until),
    fees: seen.fees.map((fee) => fee.name),
    note: seen.note,
  };
}

/** How each observation stands on the day by its id: in force, or why it is left out. */
export function standings({ offers, leftOut }: OffersOfDay): ReadonlyMap<string, "in-force" | LeftOutReason> {
  return new Map([
    ...offers.map(({ observationId }) => [observationId, "in-force"] as const),
    ...leftOut.map(({ observationId, reason }) => [observationId, reason] as const),
  ]);
}
