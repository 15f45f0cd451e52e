/** A change as it is kept: the row before and after, as stored. */
type Kept = Readonly<{
  before: Readonly<Record<string, unknown>> | null;
  after: Readonly<Record<string, unknown>> | null;
}>;

/** One field that a change touched. null: it was not there, or is not any more. */
export type FieldChange = Readonly<{ field: string; before: string | null; after: string | null }>;

/** What every row has and no person entered. */
const UNTOLD: readonly string[] = ["id", "created_at", "workspace_id"];

function valueText(value: unknown): string | null {
  if (value === null || value === undefined) return null;
  return typeof value === "string" ? value : JSON.stringify(value);
}

/** The fields that differ, in the order they are stored, with blanks for the underscores of their names. Values as stored. */
export function fieldChanges({ before, after }: Kept): FieldChange[] {
  const fields = [...new Set([...Object.keys(before ?? {}), ...Object.keys(after ?? {})])];
  return fields
    .filter((field) => !UNTOLD.includes(field))
    .map((field) => ({
      field: field.replaceAll("_", " "),
      before: valueText(before?.[field]),
      after: valueText(after?.[field]),
    }))
    .filter((change) => change.before !== change.after);
}

/** What the changed thing is called: its name, else nothing. */
export function nameOfChanged({ before, after }: Kept): string | null {
  return valueText(after?.name ?? before?.name);
}
