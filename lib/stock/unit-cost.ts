import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money } from "../money/money.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { Lot } from "./lot.ts";
import { lotCost, taxDay } from "./lot-cost.ts";
import { receiptDue } from "./receipt-due.ts";

/** A lot as if it had been bought without its charges per order (delivery); what the card was charged shrinks with them. */
function withoutOrderCharges(lot: Lot, material: Material, valuation: Valuation, day: LocalDate): Lot | null {
  const fees = lot.paid.fees.filter(({ basis }) => basis !== "order");
  if (fees.length === lot.paid.fees.length) return lot;
  // Taxes as the receipt shows them are of the delivery too: reckoned by the rates instead.
  const plain: Lot = { ...lot, paid: { ...lot.paid, fees, taxes: null } };
  const whole = receiptDue(lot, material, valuation, taxDay(lot, day));
  const less = receiptDue(plain, material, valuation, taxDay(lot, day));
  if (typeof whole === "string" || typeof less === "string") return null;
  if (whole.gross.isZero()) return plain;
  const part = (home: Decimal) => home.times(less.gross).dividedBy(whole.gross);
  return {
    ...plain,
    paidHome: lot.paidHome === null ? null : money(part(lot.paidHome.amount), lot.paidHome.currency),
    payments: lot.payments.map((payment) => ({
      ...payment,
      amount: part(payment.amount),
      home: payment.home === null ? null : part(payment.home),
    })),
  };
}

/**
 * What one purchase unit of a lot cost, all in, without charges per order: reduced as an offer's price is, so that the two can
 * be held against each other. null: its cost is not known.
 *     lot cost without charges per order / quantity
 * Units: home currency per purchase unit. Rounds: never (one division, 40 digits). Source: rules.md R4, R9.
 */
export function unitCost(
  lot: Lot,
  material: Material,
  valuation: Valuation,
  day: LocalDate = valuation.today,
): Money | null {
  const plain = withoutOrderCharges(lot, material, valuation, day);
  const cost = plain === null ? null : lotCost(plain, material, valuation, day);
  if (cost === null || !cost.known) return null;
  return money(cost.cost.amount.dividedBy(lot.quantity), cost.cost.currency);
}
