import type { Decimal } from "../decimal.ts";
import { type Quantity, UNITS, type UnitCode } from "./units.ts";

/** Two units that do not measure the same thing met: go through the material's dimensions (`lib/materials`). */
export class UnitMismatch extends Error {
  constructor(from: UnitCode, to: UnitCode) {
    super(`${from} cannot be read as ${to}: convert through a material's dimensions with convertFor`);
    this.name = "UnitMismatch";
  }
}

/** True when a quantity of one unit can be read in the other without knowing the material. */
export function sameMeasure(left: UnitCode, right: UnitCode): boolean {
  return (
    left === right || (UNITS[left].dimension === UNITS[right].dimension && UNITS[left].dimension !== "count")
  );
}

/**
 * A quantity read in another unit of its dimension.
 *     value x factor(from) / factor(to), factors exact
 * Rounds: only a division that does not end, to 40 digits. @throws {UnitMismatch} for units of two dimensions, and for
 * two counted things (a bundle is not a piece). Source: the unit definitions named in units.ts.
 */
export function inUnit(quantity: Quantity, to: UnitCode): Decimal {
  if (quantity.unit === to) return quantity.value;
  if (!sameMeasure(quantity.unit, to)) throw new UnitMismatch(quantity.unit, to);
  return quantity.value.times(UNITS[quantity.unit].factor).dividedBy(UNITS[to].factor);
}
