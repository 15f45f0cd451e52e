type Act = (form: FormData) => Promise<void>;

/** What takes the last act back: by the word in the address and the id it was done to; null: nothing does. */
export function undoOf(
  done: string | undefined,
  id: string | undefined,
  acts: Readonly<Record<string, Act>>,
): Readonly<{ action: Act; fields: Readonly<Record<string, string>> }> | null {
  const action = done === undefined ? undefined : Object.entries(acts).find(([word]) => word === done)?.[1];
  return action === undefined || id === undefined ? null : { action, fields: { id } };
}
