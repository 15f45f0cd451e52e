import { type Decimal, ONE } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { Quantity, UnitCode } from "../measure/units.ts";

const ofOne = new WeakMap<Material, Map<UnitCode, Decimal | null>>();

/** Purchase units of a material in one of a unit; null: its dimensions do not say. Worked out once per unit. */
export function purchaseUnitsInOne(material: Material, unit: UnitCode): Decimal | null {
  if (unit === material.purchaseUnit) return ONE;
  let known = ofOne.get(material);
  if (known === undefined) {
    known = new Map();
    ofOne.set(material, known);
  }
  let one = known.get(unit);
  if (one === undefined) {
    const conversion = convertFor(material, { value: ONE, unit }, material.purchaseUnit);
    one = conversion.ok ? conversion.value : null;
    known.set(unit, one);
  }
  return one;
}

/** How many purchase units an amount buys that buys `per`; null: not convertible. Rounds: as `convertFor`. */
export function purchaseUnitsBought(material: Material, per: Quantity): Decimal | null {
  const one = purchaseUnitsInOne(material, per.unit);
  if (one === null || per.value.equals(ONE)) return one;
  return one.equals(ONE) ? per.value : one.times(per.value);
}
