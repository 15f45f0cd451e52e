import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, sum } from "../money/money.ts";
import { beforeCarrying } from "./saving-parts.ts";
import type { SavingRow, SavingTotals } from "./savings-figures.ts";

/**
 * Sums over rows; a row whose saving is not known is counted and adds to none of them.
 *     saving = discount + timing + unsplit - carrying
 * Units: home currency. Rounds: never: rows are in minor units. Source: rules.md R10.
 */
export function savingTotals(rows: readonly SavingRow[], currency: CurrencyCode): SavingTotals {
  const known = rows.flatMap(({ saving, ...row }) => (saving === null ? [] : [{ ...row, saving }]));
  const of = (amounts: readonly (Money | null)[]): Money =>
    sum(
      amounts.filter((amount) => amount !== null),
      currency,
    );
  const strict = known.map((row) => row.strictSaving);
  return {
    saving: of(known.map((row) => row.saving)),
    strictSaving: of(strict),
    discount: of(known.map((row) => row.discount)),
    timing: of(known.map((row) => row.timing)),
    unsplit: of(
      known.map((row) => (row.discount === null ? beforeCarrying(row.saving, row.carrying) : null)),
    ),
    carrying: of(known.map((row) => row.carrying)),
    rows: rows.length,
    notKnown: rows.length - known.length,
    strictNotKnown: strict.filter((amount) => amount === null).length,
  };
}
