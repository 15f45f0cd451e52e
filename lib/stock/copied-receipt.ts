import { HUNDRED } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { money, roundToMinorUnit } from "../money/money.ts";
import type { Observation } from "../prices/observation.ts";
import { standingDiscount } from "../prices/standing-discount.ts";
import type { Store } from "../prices/store.ts";
import type { Lot, Paid } from "./lot.ts";

/**
 * What a receipt would say for a quantity bought at a price as seen, on the day of the order.
 *     amount = price seen / what it buys x quantity x (1 - standing discount of the day; none on a receipt)
 * Tax, region and fees are copied as they stand; a fee per one of the tag's unit becomes a fee per purchase unit.
 * Units: quantity in the material's purchase units; the tag's currency. Rounds: the amount once, half up, to the minor
 * unit. null: nothing is priced, or the unit cannot be read in purchase units. Source: rules.md R1, R4, R9.
 */
export function copiedReceipt(
  seen: Observation,
  material: Material,
  store: Store,
  { quantity, orderedOn }: Pick<Lot, "quantity" | "orderedOn">,
): Paid | null {
  if (seen.amount === null) return null;
  const inTagUnits = convertFor(material, { value: quantity, unit: material.purchaseUnit }, seen.per.unit);
  if (!inTagUnits.ok) return null;
  const { amount, currency } = seen.amount;
  const listed = amount.times(inTagUnits.value).dividedBy(seen.per.quantity);
  const off = seen.terms === "paid" ? null : standingDiscount(store, material.category, orderedOn);
  const net = off === null ? listed : listed.times(HUNDRED.minus(off)).dividedBy(HUNDRED);
  const perPurchaseUnit = inTagUnits.value.dividedBy(quantity);
  return {
    amount: roundToMinorUnit(money(net, currency)).amount,
    currency,
    taxIncluded: seen.taxIncluded,
    taxRegion: seen.taxRegion,
    exemptFrom: seen.exemptFrom,
    fees: seen.fees.map((fee) =>
      fee.basis === "unit" && fee.amount !== null
        ? { ...fee, amount: fee.amount.times(perPurchaseUnit) }
        : fee,
    ),
    taxes: null,
  };
}
