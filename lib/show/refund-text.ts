import { type Decimal, decimal, ONE, ZERO } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { Lot } from "../stock/lot.ts";
import type { NoCostReason } from "../stock/receipt-due.ts";
import { suggestedRefund } from "../stock/refund.ts";
import { moneyText, plainMoney, quantityText } from "./money-text.ts";
import { percentText } from "./percent-text.ts";

/** A refund to begin a form with: exact is decimal text; the rest says how it came about. */
export type RefundText = Readonly<{
  exact: string;
  quantity: string;
  net: string;
  tax: string;
  refund: string;
}>;

/** Suggested refunds by quantity, so that a form follows what is typed. kept: percent the store keeps, null: nothing. */
export type RefundTexts = Readonly<{
  byQuantity: Readonly<Record<string, RefundText>>;
  kept: string | null;
  unknown: NoCostReason | null;
}>;

/** Quantities a form is given refunds for; beyond, the figure is typed. */
const MOST_ROWS = 250;

function quantitiesUpTo(most: Decimal, step: Decimal): Decimal[] {
  const rows: Decimal[] = [];
  if (step.equals(ONE) && most.lessThanOrEqualTo(MOST_ROWS))
    for (let quantity = ONE; quantity.lessThan(most); quantity = quantity.plus(ONE)) rows.push(quantity);
  return most.greaterThan(ZERO) ? [...rows, most] : rows;
}

/**
 * What a store would give back for each whole quantity up to `most` (`suggestedRefund`). Rounds: as there. A fraction of a purchase
 * unit, or a large lot, has only the one for `most`.
 */
export function refundTexts(
  lot: Lot,
  material: Material,
  valuation: Valuation,
  most: Decimal,
  locale: string,
): RefundTexts {
  const byQuantity: Record<string, RefundText> = {};
  let unknown: NoCostReason | null = null;
  for (const quantity of quantitiesUpTo(most, purchaseStep(material.purchaseUnit))) {
    const found = suggestedRefund(lot, material, valuation, quantity);
    if (!found.known) {
      unknown = found.reason;
      break;
    }
    byQuantity[quantity.toFixed()] = {
      exact: plainMoney(found.refund).amount,
      quantity: quantityText(quantity, locale),
      net: moneyText(found.net, locale),
      tax: moneyText(found.tax, locale),
      refund: moneyText(found.refund, locale),
    };
  }
  const kept = lot.agreed.restockingPercent ?? decimal(0);
  return { byQuantity, unknown, kept: kept.isZero() ? null : percentText(kept, locale) };
}
