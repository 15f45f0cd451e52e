import { ZERO } from "../decimal.ts";
import type { Fault } from "../fault.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { Bill } from "./bill.ts";
import { lineAmounts } from "./line-amounts.ts";
import { quantityBought, weightOf } from "./line-shares.ts";

/** A line's faults; materials not there are the caller's to name. */
function lineFaults(bill: Bill, at: number, material: Material | undefined): Fault[] {
  const line = bill.lines[at];
  if (line === undefined || (line.materialId !== null && material === undefined)) return [];
  const path = (field: string) => `lines.${at}.${field}`;
  const faults: Fault[] = [];
  const { per } = line.price;
  if (material === undefined && per.unit !== line.unit)
    faults.push({ path: path("price.per.unit"), code: "unit-not-convertible" });
  if (material !== undefined) {
    if (quantityBought(line, material) === null)
      faults.push({ path: path("unit"), code: "unit-not-convertible" });
    if (!convertFor(material, { value: line.quantity, unit: line.unit }, per.unit).ok)
      faults.push({ path: path("price.per.unit"), code: "unit-not-convertible" });
    if (bill.shareBy === "weight" && line.returned === null && weightOf(line, material) === null)
      faults.push({ path: path("materialId"), code: "weight-unknown" });
  }
  const amounts = lineAmounts(line, bill, material);
  if (amounts === null) return faults;
  const price = amounts.net.amount.minus(amounts.restocking.amount);
  if (price.isNegative() && !price.isZero() && line.returned === null)
    faults.push({ path: path("discount.amount"), code: "too-large" });
  if (price.isZero() && line.keepLot) faults.push({ path: path("keepLot"), code: "free-only-for-salvage" });
  const fees = amounts.fees.reduce((sum, { amount }) => sum.plus(amount.amount), ZERO);
  if (line.returned !== null && amounts.net.amount.plus(fees).greaterThan(0))
    faults.push({ path: path("returned.amount"), code: "too-large" });
  return faults;
}

/**
 * What is wrong with a bill that could be read: a unit its material cannot be read in, a discount or restocking fee above
 * the price, a lot bought for nothing, a weight not known that delivery is to be shared by. Every line's, none hidden.
 */
export function billFaults(bill: Bill, materials: ReadonlyMap<string, Material>): Fault[] {
  return bill.lines.flatMap((line, at) => lineFaults(bill, at, materials.get(line.materialId ?? "")));
}
