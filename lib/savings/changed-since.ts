import type { ReportContent } from "./report-content.ts";
import { rowKey } from "./row-key.ts";
import { type SavedFigures, savedFigures } from "./saved-figures.ts";
import type { SavingRow } from "./savings-figures.ts";

/** A row whose saving or strict figure is another one now. null: there was, or is, no such row. */
export type RowChange = Readonly<{ key: string; before: SavingRow | null; after: SavingRow | null }>;
export type ChangedSince = Readonly<{
  before: SavedFigures;
  after: SavedFigures;
  rows: readonly RowChange[];
}>;

function differ(a: SavingRow, b: SavingRow): boolean {
  const digits = (value: SavingRow["saving"]) => value?.amount.toFixed() ?? null;
  return (["saving", "strictSaving", "paid", "carrying", "discount"] as const).some(
    (field) => digits(a[field]) !== digits(b[field]),
  );
}

/**
 * What is other now than when a report was kept: headlines, and the rows that differ, are gone or are new. now: the same
 * question asked again, as of the same day, with all that has been corrected since (R11). Rounds: never.
 */
export function changedSince(kept: ReportContent, now: ReportContent): ChangedSince {
  const old = new Map(kept.rows.map((row) => [rowKey(row), row]));
  const fresh = new Map(now.rows.map((row) => [rowKey(row), row]));
  const rows = [...new Set([...old.keys(), ...fresh.keys()])].flatMap((key): RowChange[] => {
    const [before, after] = [old.get(key) ?? null, fresh.get(key) ?? null];
    const same = before !== null && after !== null && !differ(before, after);
    return same ? [] : [{ key, before, after }];
  });
  return { before: savedFigures(kept), after: savedFigures(now), rows };
}
