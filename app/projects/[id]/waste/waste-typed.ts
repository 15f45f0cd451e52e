import { typed, typedAll, typedAmount, typedOrNull } from "../../../_forms/typed.ts";

/** What the form of waste sent, as an entry still to be checked; decimals as canonical text. */
export function typedWaste(form: FormData, locale: string) {
  const value = typedAmount(form, "weight", locale);
  return {
    kind: typed(form, "kind"),
    on: typed(form, "on"),
    feeBasis: typed(form, "feeBasis"),
    fee: typedAmount(form, "fee", locale),
    least: typedAmount(form, "least", locale) ?? null,
    loads: typedAmount(form, "loads", locale) ?? null,
    hauling: typedAmount(form, "hauling", locale) ?? "0",
    currency: typed(form, "currency"),
    taxIncluded: typed(form, "taxIncluded") === "yes",
    taxRegion: typedOrNull(form, "taxRegion"),
    weight: value === undefined ? null : { value, unit: typed(form, "weightUnit") },
    materialId: typedAll(form, "materialId")[0] ?? null,
    quantity: typedAmount(form, "quantity", locale) ?? null,
    note: typedOrNull(form, "note"),
  };
}
