import { type Decimal, ZERO } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, sum } from "../money/money.ts";
import { split } from "../money/split.ts";
import type { Bill, BilledLine } from "./bill.ts";
import type { BesideLines, BillFigures, BillTerms } from "./bill-figures.ts";

/** A line's part of a fee beside the lines (or of a deposit that was forfeited), and of the tax on it. */
export type FeeShare = BesideLines & Readonly<{ taxable: boolean }>;

/** What one line bears of the whole bill: its own amounts, its shares, and their sum. */
export type LineShare = Readonly<{ fees: readonly FeeShare[]; rebate: Money; total: Money }>;

/** How much of a material a line is in its purchase unit; null: its dimensions do not say. A line of no material: as printed. */
export function quantityBought(line: BilledLine, material: Material | undefined): Decimal | null {
  if (material === undefined) return line.quantity;
  const read = convertFor(material, { value: line.quantity, unit: line.unit }, material.purchaseUnit);
  return read.ok ? read.value : null;
}

/** What a line weighs, in kilograms; null: not known of the material. A line of no material weighs nothing: work, a hire. */
export function weightOf(line: BilledLine, material: Material | undefined): Decimal | null {
  if (material === undefined) return ZERO;
  const read = convertFor(material, { value: line.quantity, unit: line.unit }, "kilogram");
  return read.ok ? read.value : null;
}

/** The weights of the lines: goods handed back bear nothing of what brings the others. null: one is not known. */
function weightsOf(bill: Bill, { materials }: BillTerms, { lines }: BillFigures): Decimal[] | null {
  const weights: Decimal[] = [];
  for (const [at, line] of bill.lines.entries()) {
    const material = materials.get(line.materialId ?? "");
    const by = {
      value: () => lines[at]?.net.amount ?? ZERO,
      weight: () => weightOf(line, material),
      count: () => quantityBought(line, material),
    };
    const weight = line.returned === null ? by[bill.shareBy]() : ZERO;
    if (weight === null) return null;
    weights.push(weight);
  }
  return weights;
}

/**
 * Delivery, fees, forfeited deposits and rebates laid on a bill's lines without losing a cent.
 *     total = net + own fees + own tax + shares of what is beside the lines and of its tax - share of the rebates
 * By value, weight or count as the bill says (rebates always by value); the totals sum to the bill's cost. The few cents
 * paying in cash rounds off or on are in no line. Units: the bill's currency. Rounds: by the largest remainder (`split`).
 * null: shared by weight, and the weight of a line is not known.
 */
export function lineShares(bill: Bill, terms: BillTerms, figures: BillFigures): LineShare[] | null {
  const weights = weightsOf(bill, terms, figures);
  if (weights === null) return null;
  if (weights.length === 0) return [];
  const forfeited = (at: number) => bill.deposits[at]?.forfeited === true;
  const beside: readonly (BesideLines & { taxable: boolean })[] = [
    ...figures.fees.map((fee, at) => ({ ...fee, taxable: bill.fees[at]?.taxable === true })),
    ...figures.deposits
      .map((deposit, at) => ({ ...deposit, taxable: bill.deposits[at]?.taxable === true }))
      .filter((_, at) => forfeited(at)),
  ];
  const shared = beside.map(({ name, amount, taxes, taxable }) => {
    const parts = taxes.map((one) => ({ ...one, parts: split(one.amount, weights) }));
    return split(amount, weights).map((share, at): FeeShare => {
      const borne = parts.map((one) => ({ component: one.component, amount: one.parts[at] ?? one.amount }));
      const tax = sum(
        borne.map((one) => one.amount),
        bill.currency,
      );
      return { name, amount: share, tax, taxes: borne, taxable };
    });
  });
  const values = figures.lines.map(({ net }) => (net.amount.isNegative() ? ZERO : net.amount));
  const rebates = split(figures.rebates, values);

  return figures.lines.map((line, at): LineShare => {
    const fees = shared.flatMap((row) => row.slice(at, at + 1));
    const rebate = rebates[at] ?? money(ZERO, bill.currency);
    const tax = (of: { tax: Money }) => (bill.taxIncluded ? ZERO : of.tax.amount);
    const own = line.fees.reduce(
      (before, { amount }) => before.plus(amount.amount),
      line.net.amount.plus(tax(line)),
    );
    const borne = fees.reduce((before, share) => before.plus(share.amount.amount).plus(tax(share)), own);
    return { fees, rebate, total: money(borne.minus(rebate.amount), bill.currency) };
  });
}
