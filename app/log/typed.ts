import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { CurrencyCode } from "../../lib/money/currencies.ts";
import { TERMS } from "../../lib/prices/observation.ts";
import { typed, typedAmount } from "../_forms/typed.ts";
import type { TypedPrice } from "./check-price.ts";

type Chosen = Readonly<{
  materialId: string | undefined;
  storeId: string | undefined;
  unit: PurchaseUnit;
  currency: CurrencyCode;
}>;

/** The form as it was typed. What cannot be read as an amount stays as typed, so that its fault is named. */
export function typedPrice(form: FormData, chosen: Chosen, locale: string): TypedPrice {
  const amount = (name: string) => typedAmount(form, name, locale);
  return {
    ...chosen,
    terms: TERMS.find((one) => one === typed(form, "terms")) ?? "shelf",
    amount: amount("amount"),
    per: amount("per.quantity"),
    taxIncluded: typed(form, "taxIncluded") === "yes",
    seenOn: typed(form, "seenOn"),
    from: typed(form, "from"),
    until: typed(form, "until"),
    minQuantity: amount("minQuantity"),
    maxQuantity: amount("maxQuantity"),
    packSize: amount("packSize"),
    paidFor: amount("paidFor"),
    freeWith: amount("freeWith"),
    charge: amount("fees.0.amount"),
    note: typed(form, "note"),
  };
}
