import type { Store } from "../../lib/prices/store.ts";
import { typed, typedAll, typedAmount } from "../_forms/typed.ts";

/** What the log form sent, as an entry still to be checked: the currency is the store's, "none left" has no price. */
export function typedPrice(form: FormData, store: Store | null, locale: string) {
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
  };
}
