import { rowsTyped, typed, typedAll, typedAmount, typedOrNull } from "../_forms/typed.ts";

/** Accepted alternatives as typed: rows without a material are left out. */
function alternatives(form: FormData, locale: string) {
  return rowsTyped(form, "alternatives")
    .map((number) => `alternatives.${number}`)
    .filter((at) => typedAll(form, `${at}.materialId`).length > 0)
    .map((at) => ({
      materialId: typedAll(form, `${at}.materialId`)[0],
      factor: typedAmount(form, `${at}.factor`, locale) ?? "1",
    }));
}

/** What the form of a need sent, as an entry still to be checked; decimals as canonical text. */
export function typedNeed(form: FormData, locale: string) {
  return {
    quantity: typedAmount(form, "quantity", locale),
    unit: typed(form, "unit"),
    wastePercent: typedAmount(form, "wastePercent", locale) ?? "0",
    neededBy: typed(form, "neededBy"),
    budgetUnitPrice: typedAmount(form, "budgetUnitPrice", locale) ?? null,
    acceptsUsed: typed(form, "acceptsUsed") === "yes",
    alternatives: alternatives(form, locale),
    validFrom: typedOrNull(form, "validFrom"),
  };
}
