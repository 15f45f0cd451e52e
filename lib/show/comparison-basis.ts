import { type LocalDate, within } from "../calendar/local-date.ts";
import { type Decimal, ONE } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Valuation } from "../prices/valuation.ts";
import { dayText } from "./day-text.ts";
import { quantityText } from "./money-text.ts";

/** For how much figures beside each other are: a quantity, all that is open or required, or each as it was last seen. */
export type ComparedFor =
  | Readonly<{ quantity: Decimal; unit: PurchaseUnit }>
  | "open"
  | "required"
  | "last-seen";

/**
 * What figures beside each other have in common, as the parts of one sentence. taxes: what the buyer gets back and is
 * therefore not in them. when "seen": each figure is of the day it was seen. Charges per order (delivery, a fee for small
 * orders) are never in them (R4).
 */
export type ComparisonBasis = Readonly<{
  of: "each" | "one" | "quantity" | "open" | "required" | "last-seen";
  unit: PurchaseUnit;
  quantity: string;
  exact: string;
  currency: CurrencyCode;
  back: "none" | "some";
  taxes: string;
  when: "day" | "seen";
  day: string;
}>;

/**
 * The basis of a comparison on screen: quantity, tax, currency and day, so that no figure stands there without them.
 * Taxes are those the workspace is registered for on the day. Rounds: the quantity to three places, for reading.
 * Source: rules.md R2-R4.
 */
export function comparisonBasis(
  compared: ComparedFor,
  { homeCurrency, registrations }: Pick<Valuation, "homeCurrency" | "registrations">,
  day: LocalDate,
  locale: string,
): ComparisonBasis {
  const { quantity, unit } =
    typeof compared === "string" ? ({ quantity: ONE, unit: "each" } as const) : compared;
  const back = registrations.filter(({ from, until }) => within(day, from, until)).map(({ tax }) => tax);
  const one = unit === "each" ? "each" : "one";
  return {
    of: typeof compared === "string" ? compared : quantity.equals(ONE) ? one : "quantity",
    unit,
    quantity: quantityText(quantity, locale),
    exact: quantity.toFixed(),
    currency: homeCurrency,
    back: back.length === 0 ? "none" : "some",
    taxes: new Intl.ListFormat(locale, { type: "conjunction" }).format(new Set(back)),
    when: compared === "last-seen" ? "seen" : "day",
    day: dayText(day, locale),
  };
}
