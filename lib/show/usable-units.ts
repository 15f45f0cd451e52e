import { ONE } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { PURCHASE_UNITS, type PurchaseUnit } from "../measure/units.ts";

/** The units a quantity or a price of a material can be stated in, the one it is bought by first. */
export function usableUnits(material: Material): PurchaseUnit[] {
  const own = material.purchaseUnit;
  const others = PURCHASE_UNITS.filter(
    (unit) => unit !== own && convertFor(material, { value: ONE, unit }, own).ok,
  );
  return [own, ...others];
}
