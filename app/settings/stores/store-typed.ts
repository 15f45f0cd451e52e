import { rowsTyped, typed, typedAmount, typedOrNull } from "../../_forms/typed.ts";

type Reader = (name: string) => string | null;

/** Rows of a repeated group that have anything in them beside their fixed choices. */
function filledRows<T>(
  form: FormData,
  prefix: string,
  telling: readonly string[],
  row: (at: string) => T,
): T[] {
  return rowsTyped(form, prefix)
    .map((number) => `${prefix}.${number}`)
    .filter((at) => telling.some((name) => typed(form, `${at}.${name}`) !== undefined))
    .map(row);
}

/** The store form as the entry's input; decimals as canonical text. */
export function storeTyped(form: FormData, locale: string) {
  const amount = (name: string) => typedAmount(form, name, locale) ?? null;
  const text: Reader = (name) => typedOrNull(form, name);
  const charges = filledRows(form, "importCharges", ["name", "percent", "perOrder"], (at) => ({
    name: text(`${at}.name`) ?? "",
    percent: amount(`${at}.percent`) ?? "",
    perOrder: amount(`${at}.perOrder`),
    recoverable: typed(form, `${at}.recoverable`) === "yes",
    from: text(`${at}.from`),
    until: text(`${at}.until`),
  }));
  const state = typed(form, "importState");
  return {
    name: text("name") ?? "",
    taxRegion: text("taxRegion") ?? "",
    currency: text("currency") ?? "",
    pricesIncludeTax: typed(form, "pricesIncludeTax") === "yes",
    tripCost:
      amount("tripCost.amount") === null
        ? null
        : { amount: amount("tripCost.amount"), currency: text("tripCost.currency") },
    distanceKm: amount("distanceKm"),
    returnDays: text("returnDays"),
    priceAdjustmentDays: text("priceAdjustmentDays"),
    restockingPercent: amount("restockingPercent"),
    leadDays: text("leadDays"),
    discounts: filledRows(form, "discounts", ["percent"], (at) => ({
      category: text(`${at}.category`),
      percent: amount(`${at}.percent`) ?? "",
      from: text(`${at}.from`),
      until: text(`${at}.until`),
    })),
    importCharges: state === "none" ? [] : state === "some" || charges.length > 0 ? charges : null,
  };
}
