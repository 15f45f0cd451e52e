import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import type * as z from "zod";
import { type Fault, faultsOf, type Written } from "../../lib/fault.ts";
import type { FormFault, FormState } from "../_ui/form-state.ts";
import { isDatabaseDown } from "./database-down.ts";
import { type FieldNames, faultWords } from "./fault-words.ts";

/** An entry parsed by its schema and then written; its faults when it does not parse. */
export async function writeChecked<S extends z.ZodType, T>(
  entry: S,
  input: unknown,
  write: (parsed: z.output<S>) => Promise<Written<T>>,
): Promise<Written<T>> {
  const read = entry.safeParse(input);
  if (!read.success) return { ok: false, why: "faults", faults: faultsOf(read.error) };
  return write(read.data);
}

function valuesOf(form: FormData): Record<string, string[]> {
  const values: Record<string, string[]> = {};
  for (const [name, value] of form) {
    if (typeof value !== "string" || name.startsWith("$")) continue;
    values[name] = [...(values[name] ?? []), value];
  }
  return values;
}

/**
 * What every form action answers: on to the next page when the write was accepted; else the form again, with what was typed,
 * each fault in words, or one sentence when the database is down, the entry is gone, or the form was sent before.
 */
export async function answer<T>(
  previous: FormState,
  form: FormData,
  names: FieldNames,
  write: () => Promise<Written<T>>,
  next: (value: T) => string,
): Promise<FormState> {
  const again = (faults: readonly FormFault[], trouble: string | null): FormState => ({
    values: valuesOf(form),
    faults,
    trouble,
    attempt: previous.attempt + 1,
  });
  const written = await reached(write);
  if (written !== "down" && written.ok) redirect(next(written.value));
  const t = await getTranslations("ui");
  if (written === "down") return again([], t("databaseDown"));
  if (written.why === "conflict") return again([], t("conflict"));
  if (written.why === "not-there") return again([], t("gone"));
  return again(await faultWords(written.faults, names), null);
}

async function reached<T>(write: () => Promise<Written<T>>): Promise<Written<T> | "down"> {
  try {
    return await write();
  } catch (error) {
    if (isDatabaseDown(error)) return "down";
    throw error;
  }
}

/** A refused write with one fault, for actions that look before they write. */
export function refused(fault: Fault): Readonly<{ ok: false; why: "faults"; faults: readonly Fault[] }> {
  return { ok: false, why: "faults", faults: [fault] };
}
