import type { LocalDate } from "../calendar/local-date.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { add, type Money, money } from "../money/money.ts";
import type { SavingRow } from "./savings-figures.ts";

/** What had been saved and lost by the end of a day. saved >= 0 >= lost; net = saved + lost. */
export type SavedBy = Readonly<{ on: LocalDate; saved: Money; lost: Money; net: Money }>;

/**
 * Realised savings and losses heaped up day by day: rows above nothing go to `saved`, rows below to `lost`, so a loss is
 * never hidden in a gain of the same day. One point for each day on which something left; what is not known adds nothing.
 * The last point's net is the realised saving. Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function savingsThroughTime(rows: readonly SavingRow[], currency: CurrencyCode): SavedBy[] {
  const known = rows.flatMap(({ on, saving }) => (on === null || saving === null ? [] : [{ on, saving }]));
  known.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  const points = new Map<LocalDate, SavedBy>();
  let saved = money(0, currency);
  let lost = saved;
  for (const { on, saving } of known) {
    if (saving.amount.isNegative()) lost = add(lost, saving);
    else saved = add(saved, saving);
    points.set(on, { on, saved, lost, net: add(saved, lost) });
  }
  return [...points.values()];
}
