type Row = Readonly<Record<string, unknown>> | null;

/** One column of a change as text: what it was and what it is; null where there was nothing. */
export type ChangedField = Readonly<{ field: string; before: string | null; after: string | null }>;

/** Columns that say nothing to a reader: keys, the order of recording, the entry's hash. */
const SILENT = new Set(["id", "workspace_id", "entry_hash", "sequence", "recorded_at", "created_at"]);

function said(value: unknown): string | null {
  if (value === null || value === undefined || value === "") return null;
  if (Array.isArray(value) && value.length === 0) return null;
  return typeof value === "string" ? value : JSON.stringify(value);
}

/**
 * The columns a change of a row touched, in the row's own order; of a new or removed row all that say something. The values
 * are as stored: the change log is evidence and is not rounded or translated.
 */
export function changedFields(before: Row, after: Row): ChangedField[] {
  const columns = new Set([...Object.keys(before ?? {}), ...Object.keys(after ?? {})]);
  return [...columns]
    .filter((field) => !SILENT.has(field))
    .map((field) => ({ field, before: said(before?.[field]), after: said(after?.[field]) }))
    .filter((changed) => changed.before !== changed.after);
}
