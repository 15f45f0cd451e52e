import { DIMENSION_NAMES, type DimensionName } from "../../lib/materials/material.ts";
import { quantityOf } from "../../lib/measure/quantity-text.ts";
import { IDENTITY_NAMES } from "../../lib/show/identity-fields.ts";
import { parseAmount } from "../../lib/show/parse-amount.ts";
import { typed, typedAll, typedOrNull } from "../_forms/typed.ts";

/**
 * A size as the entry reads it: "92 5/8" with inch beside it, or "8 ft" with its own unit; a comma as the language has it.
 * What cannot be read stays as typed, so that the entry names the fault.
 */
function sizeTyped(form: FormData, name: DimensionName, locale: string): string | undefined {
  const text = typed(form, `dimensions.${name}`);
  if (text === undefined) return undefined;
  const unit = typed(form, `dimensions.${name}.unit`) ?? "";
  const size = quantityOf(`${parseAmount(text, locale) ?? text} ${unit}`) ?? quantityOf(text);
  return size === null ? `${text} ${unit}` : `${size.value.toFixed()} ${size.unit}`;
}

/** The material form as the entry's input. */
export function materialTyped(form: FormData, locale: string) {
  const sizes = DIMENSION_NAMES.map((name) => [name, sizeTyped(form, name, locale)] as const);
  return {
    name: typed(form, "name") ?? "",
    category: typed(form, "category"),
    purchaseUnit: typed(form, "purchaseUnit"),
    dimensions: Object.fromEntries(sizes.filter(([, text]) => text !== undefined)),
    identity: Object.fromEntries(
      IDENTITY_NAMES.flatMap((name) => {
        const text = typed(form, `identity.${name}`);
        return text === undefined ? [] : [[name, text]];
      }),
    ),
    shelfLifeDays: typedOrNull(form, "shelfLifeDays"),
    recheckDays: typedOrNull(form, "recheckDays"),
    exemptFrom: typedAll(form, "exemptFrom"),
    note: typedOrNull(form, "note"),
  };
}
