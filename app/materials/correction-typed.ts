import { rowsTyped, typed, typedAll, typedAmount, typedOrNull } from "../_forms/typed.ts";

/** Rows of fees that have a name or a figure. */
function feesTyped(form: FormData, locale: string) {
  return rowsTyped(form, "fees")
    .map((row) => `fees.${row}`)
    .filter((at) => ["name", "amount", "percent"].some((name) => typed(form, `${at}.${name}`) !== undefined))
    .map((at) => ({
      name: typed(form, `${at}.name`) ?? "",
      amount: typedAmount(form, `${at}.amount`, locale) ?? null,
      percent: typedAmount(form, `${at}.percent`, locale) ?? null,
      basis: typed(form, `${at}.basis`) ?? "unit",
      freeFrom: typedAmount(form, `${at}.freeFrom`, locale) ?? null,
      taxable: typed(form, `${at}.taxable`) === "yes",
    }));
}

/** The correction form as the entry's input: every field that can be corrected, empty ones as none. */
export function correctionTyped(form: FormData, locale: string) {
  const amountOrNull = (name: string) => typedAmount(form, name, locale) ?? null;
  const terms = typed(form, "terms");
  return {
    seenOn: typed(form, "seenOn") ?? "",
    terms,
    amount: terms === "none-left" ? null : amountOrNull("amount"),
    currency: typed(form, "currency"),
    per: { quantity: typedAmount(form, "per.quantity", locale) ?? "", unit: typed(form, "per.unit") },
    taxIncluded: typed(form, "taxIncluded") === "yes",
    taxRegion: typedOrNull(form, "taxRegion"),
    exemptFrom: typedAll(form, "exemptFrom"),
    minQuantity: amountOrNull("minQuantity"),
    maxQuantity: amountOrNull("maxQuantity"),
    packSize: amountOrNull("packSize"),
    from: typedOrNull(form, "from"),
    until: typedOrNull(form, "until"),
    fees: feesTyped(form, locale),
    note: typedOrNull(form, "note"),
    reason: typed(form, "reason") ?? "",
  };
}
