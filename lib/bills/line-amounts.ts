import { type Decimal, HUNDRED, ONE, ZERO } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, roundToMinorUnit, times } from "../money/money.ts";
import type { Bill, BilledFee, BilledLine } from "./bill.ts";

/** A line's amounts in the bill's currency, as printed: below zero for goods handed back. */
export type LineAmounts = Readonly<{
  /** After the discount and, for goods handed back, the restocking fee. */
  net: Money;
  /** How much the discount took off. */
  discount: Money;
  restocking: Money;
  fees: readonly Readonly<{ name: string; amount: Money; taxable: boolean }>[];
  /** What the taxes are put on. */
  taxable: Money;
  exempt: readonly string[];
}>;

/** How much of what the price is for the line buys; null where the material's dimensions do not say. */
function pricedQuantity(line: BilledLine, material: Material | undefined): Decimal | null {
  const { quantity, unit } = line;
  if (unit === line.price.per.unit) return quantity;
  if (material === undefined) return null;
  const converted = convertFor(material, { value: quantity, unit }, line.price.per.unit);
  return converted.ok ? converted.value : null;
}

/** A fee for a quantity: an amount for each, or a percent of what it is a fee on. Rounds: once, half up. */
function feeAmount(fee: Pick<BilledFee, "amount" | "percent">, each: Decimal, on: Money): Money {
  const flat = (fee.amount ?? ZERO).times(each);
  const part = on.amount.times(fee.percent ?? ZERO).dividedBy(HUNDRED);
  return roundToMinorUnit(money(flat.plus(part), on.currency));
}

/** A fee of the whole bill: its amount, or a percent of the lines together. Rounds: once, half up. */
export function orderFeeAmount(fee: BilledFee, subtotal: Money): Money {
  return feeAmount(fee, ONE, subtotal);
}

/**
 * What one line comes to.
 *     listed = price / what it buys x quantity;  net = listed - percent of it - amount off;  handed back: -(net) + restocking
 *     taxable = net + taxable fees; for goods handed back the restocking fee lessens it only where it is taxed
 * Units: the bill's currency. Rounds: the net once, half up, to the minor unit (3 for 20.00: 38 are 253.33), each fee and
 * the restocking fee once. null: the price's unit cannot be read in the line's. Source: rules.md R1, R4.
 */
export function lineAmounts(
  line: BilledLine,
  bill: Bill,
  material: Material | undefined,
): LineAmounts | null {
  const priced = pricedQuantity(line, material);
  if (priced === null) return null;
  const { currency } = bill;
  const listed = line.price.amount.times(priced).dividedBy(line.price.per.quantity);
  const off = listed
    .times(line.discount?.percent ?? ZERO)
    .dividedBy(HUNDRED)
    .plus(line.discount?.amount ?? ZERO);
  const price = roundToMinorUnit(money(listed.minus(off), currency));
  const sign = line.returned === null ? 1 : -1;
  const kept = line.returned === null ? money(ZERO, currency) : feeAmount(line.returned, ONE, price);
  const fees = line.fees.map((fee) => ({
    name: fee.name,
    amount: times(feeAmount(fee, line.quantity, price), sign),
    taxable: fee.taxable,
  }));
  const taxedFees = fees
    .filter((fee) => fee.taxable)
    .reduce((sum, { amount }) => sum.plus(amount.amount), ZERO);
  const goods = times(price, sign).amount;
  const taxedRestocking = line.returned?.taxable === true ? kept.amount : ZERO;
  return {
    net: money(goods.plus(kept.amount), currency),
    discount: money(roundToMinorUnit(money(listed, currency)).amount.minus(price.amount), currency),
    restocking: kept,
    fees,
    taxable: money(goods.plus(taxedRestocking).plus(taxedFees), currency),
    exempt: [...line.exemptFrom, ...(material?.exemptFrom ?? [])],
  };
}
