/** What was typed into a form, to be given back with it. Passwords are not. */
export function valuesOf(form: FormData): Record<string, string[]> {
  const values: Record<string, string[]> = {};
  for (const [name, value] of form) {
    if (typeof value !== "string" || name.startsWith("$") || name === "password") continue;
    values[name] = [...(values[name] ?? []), value];
  }
  return values;
}
