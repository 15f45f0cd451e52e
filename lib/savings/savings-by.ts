import type { CurrencyCode } from "../money/currencies.ts";
import { savingTotals } from "./saving-totals.ts";
import type { SavingRow, SavingTotals } from "./savings-figures.ts";

export const SAVING_VIEWS = ["project", "material", "month", "origin"] as const;
export type SavingView = (typeof SAVING_VIEWS)[number];

/** The rows of one project, material, month or origin. key null: of no project; of no month, since it has not left yet. */
export type SavingGroup = Readonly<{
  key: string | null;
  rows: readonly SavingRow[];
  realised: SavingTotals;
  unrealised: SavingTotals;
}>;

/** The month a row counts in, "2026-03"; null while it is held. */
export function monthOfRow({ on }: Pick<SavingRow, "on">): string | null {
  return on === null ? null : on.slice(0, "2026-03".length);
}

/** What a view groups a row by. originOf: what a lot's origin is, by the lot's id. */
export function keyOfRow(
  view: SavingView,
  row: SavingRow,
  originOf: (lotId: string) => string | null,
): string | null {
  if (view === "project") return row.projectId;
  if (view === "material") return row.materialId;
  return view === "month" ? monthOfRow(row) : originOf(row.lotId);
}

/**
 * Rows in groups, each with its totals; every row is in one group, so the groups add up to the total of all rows.
 * Groups by key, the one without a key last. Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function savingsBy(
  rows: readonly SavingRow[],
  keyOf: (row: SavingRow) => string | null,
  currency: CurrencyCode,
): SavingGroup[] {
  const groups = new Map<string | null, SavingRow[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return [...groups]
    .sort(([a], [b]) => (a === null ? 1 : b === null ? -1 : a < b ? -1 : 1))
    .map(([key, own]) => ({
      key,
      rows: own,
      realised: savingTotals(
        own.filter(({ kind }) => kind !== "held"),
        currency,
      ),
      unrealised: savingTotals(
        own.filter(({ kind }) => kind === "held"),
        currency,
      ),
    }));
}
