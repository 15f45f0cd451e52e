import { parseAmount } from "../../lib/show/parse-amount.ts";

/** Text as typed, without blanks around it; undefined when the field is empty or not there. */
export function typed(form: FormData, name: string): string | undefined {
  const value = form.get(name);
  if (typeof value !== "string") return undefined;
  const text = value.trim();
  return text === "" ? undefined : text;
}

/** The same, null when empty: for a patch that clears a value. */
export function typedOrNull(form: FormData, name: string): string | null {
  return typed(form, name) ?? null;
}

/** An amount as canonical decimal text; what cannot be read stays as typed, so that the entry names the fault. */
export function typedAmount(form: FormData, name: string, locale: string): string | undefined {
  const text = typed(form, name);
  return text === undefined ? undefined : (parseAmount(text, locale) ?? text);
}

/** Every text sent under a name: check boxes. */
export function typedAll(form: FormData, name: string): string[] {
  return form
    .getAll(name)
    .filter((value): value is string => typeof value === "string" && value.trim() !== "");
}

/** The numbers i of fields called `prefix.i.…`, in order: rows of a repeated group. */
export function rowsTyped(form: FormData, prefix: string): number[] {
  const numbers = [...form.keys()]
    .filter((key) => key.startsWith(`${prefix}.`))
    .map((key) => Number(key.slice(prefix.length + 1).split(".")[0]))
    .filter((number) => Number.isInteger(number) && number >= 0);
  return [...new Set(numbers)].sort((a, b) => a - b);
}
