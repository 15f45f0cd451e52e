import type * as z from "zod";
import { amount } from "../../lib/entry-fields.ts";
import type { freeEntry } from "../../lib/prices/free-entry.ts";
import { packOfFree } from "../../lib/prices/free-with-bought.ts";
import type { Store } from "../../lib/prices/store.ts";
import { typed, typedAll, typedAmount } from "../_forms/typed.ts";

/** A charge once per order, called by its name; taxed, as delivery mostly is. Left out where none is typed. */
function orderCharge(form: FormData, locale: string, name: string) {
  const amountTyped = typedAmount(form, "fees.0.amount", locale);
  return amountTyped === undefined
    ? []
    : [{ name, amount: amountTyped, basis: "order" as const, taxable: true }];
}

/**
 * What the log form sent, as an entry still to be checked: the currency is the store's, "none left" has no price.
 * chargeName: what a charge per order is called.
 */
export function typedPrice(form: FormData, store: Store | null, locale: string, chargeName: string) {
  const terms = typed(form, "terms") ?? "shelf";
  const noneLeft = terms === "none-left";
  const common = {
    materialId: typedAll(form, "materialId")[0],
    storeId: typed(form, "storeId"),
    seenOn: typed(form, "seenOn"),
    terms,
    note: typed(form, "note"),
  };
  if (noneLeft) return common;
  return {
    ...common,
    amount: typedAmount(form, "amount", locale),
    currency: store?.currency,
    per: { quantity: typedAmount(form, "per.quantity", locale) ?? "1", unit: typed(form, "per.unit") },
    taxIncluded: typed(form, "taxIncluded") === "yes",
    from: typed(form, "from"),
    until: typed(form, "until"),
    minQuantity: typedAmount(form, "minQuantity", locale),
    maxQuantity: typedAmount(form, "maxQuantity", locale),
    packSize: typedAmount(form, "packSize", locale),
    fees: orderCharge(form, locale, chargeName),
  };
}

type TypedPrice = ReturnType<typeof typedPrice>;

/** "Buy so many, get so many free" as typed; null where neither field was filled in, or nothing is priced. */
export function freeTyped(form: FormData, locale: string) {
  const paidFor = typedAmount(form, "paidFor", locale);
  const freeWith = typedAmount(form, "freeWith", locale);
  const none = (paidFor ?? freeWith) === undefined || typed(form, "terms") === "none-left";
  return none ? null : { paidFor, freeWith };
}

/**
 * The same price with its free ones in it: so much for so many, in full packs unless other packs were typed. A shelf price
 * stays in force beside it, so it is a special. What is no amount stays as typed, so that the entry names the fault.
 */
export function withFree(input: TypedPrice, { paidFor, freeWith }: z.output<typeof freeEntry>): TypedPrice {
  if (!("per" in input)) return input;
  const [price, per] = [amount().safeParse(input.amount), amount().safeParse(input.per.quantity)];
  if (!price.success || !per.success) return input;
  const pack = packOfFree({ amount: price.data, per: per.data }, { paid: paidFor, free: freeWith });
  return {
    ...input,
    terms: input.terms === "shelf" ? "special" : input.terms,
    amount: pack.amount.toFixed(),
    per: { ...input.per, quantity: pack.per.toFixed() },
    packSize: input.packSize ?? pack.packSize.toFixed(),
  };
}
