import { type Decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { CurrencyMismatch, type Money, money, sum } from "../money/money.ts";
import type { SavingRow, SavingTotals } from "./savings-figures.ts";

/** Adds to a total what is known of an amount; another currency is refused as everywhere. */
function plus(total: Decimal, amount: Money | null, currency: CurrencyCode): Decimal {
  if (amount === null) return total;
  if (amount.currency !== currency) throw new CurrencyMismatch(currency, amount.currency);
  return total.plus(amount.amount);
}

/**
 * Sums over rows; a row whose saving is not known is counted and adds to none of them.
 *     saving = discount + timing + unsplit - carrying
 * Units: home currency. Rounds: never: rows are in minor units. @throws {CurrencyMismatch}. Source: rules.md R10.
 */
export function savingTotals(rows: readonly SavingRow[], currency: CurrencyCode): SavingTotals {
  let [saving, strictSaving, discount, timing, unsplit, carrying] = [ZERO, ZERO, ZERO, ZERO, ZERO, ZERO];
  let notKnown = 0;
  let strictNotKnown = 0;
  for (const row of rows) {
    if (row.saving === null) {
      notKnown += 1;
      continue;
    }
    saving = plus(saving, row.saving, currency);
    carrying = plus(carrying, row.carrying, currency);
    if (row.discount === null) unsplit = plus(plus(unsplit, row.saving, currency), row.carrying, currency);
    discount = plus(discount, row.discount, currency);
    timing = plus(timing, row.timing, currency);
    strictSaving = plus(strictSaving, row.strictSaving, currency);
    if (row.strictSaving === null) strictNotKnown += 1;
  }
  return {
    saving: money(saving, currency),
    strictSaving: money(strictSaving, currency),
    discount: money(discount, currency),
    timing: money(timing, currency),
    unsplit: money(unsplit, currency),
    carrying: money(carrying, currency),
    rows: rows.length,
    notKnown,
    strictNotKnown,
  };
}

/** Totals of several lots of rows as the totals of all of them. Units: home currency. Rounds: never. @throws {CurrencyMismatch}. */
export function totalsTogether(parts: readonly SavingTotals[], currency: CurrencyCode): SavingTotals {
  const amount = (of: (totals: SavingTotals) => Money) => sum(parts.map(of), currency);
  const count = (of: (totals: SavingTotals) => number) => parts.reduce((all, one) => all + of(one), 0);
  return {
    saving: amount((one) => one.saving),
    strictSaving: amount((one) => one.strictSaving),
    discount: amount((one) => one.discount),
    timing: amount((one) => one.timing),
    unsplit: amount((one) => one.unsplit),
    carrying: amount((one) => one.carrying),
    rows: count((one) => one.rows),
    notKnown: count((one) => one.notKnown),
    strictNotKnown: count((one) => one.strictNotKnown),
  };
}
