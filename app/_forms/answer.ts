import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import type * as z from "zod";
import { type Fault, faultsOf, type Written } from "../../lib/fault.ts";
import type { FormFault, FormState } from "../_ui/form-state.ts";
import { seesDemo } from "../_workspace/workspace-seen.ts";
import { isDatabaseDown } from "./database-down.ts";
import { type FieldNames, faultWords } from "./fault-words.ts";
import { fingerprint } from "./fingerprint.ts";
import { valuesOf } from "./values-of.ts";

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

/** Whether a tab left open would write into other data: the demo was opened, or left, in another tab since. */
export async function isElsewhere(form: FormData): Promise<boolean> {
  const place = form.get("place");
  return typeof place === "string" && place !== ((await seesDemo()) ? "demo" : "owner");
}

export type AnswerOptions = Readonly<{
  /** The thing as it stands now: a form drawn from an earlier state of it is not saved over the newer one unasked. */
  now?: () => Promise<unknown>;
  /** What to say when something else is stored in the place of what was sent. */
  conflict?: string;
}>;

/**
 * What every form action answers: on to the next page when the write was accepted; else the form again, with what was typed,
 * each fault in words, or one sentence when the database is down, the entry is gone, the form was sent before, or what it
 * changes was changed elsewhere (sent once more, it is saved all the same).
 */
export async function answer<T>(
  previous: FormState,
  form: FormData,
  names: FieldNames,
  write: () => Promise<Written<T>>,
  next: (value: T) => string,
  { now, conflict }: AnswerOptions = {},
): Promise<FormState> {
  const t = await getTranslations("ui");
  const again = (
    faults: readonly FormFault[],
    trouble: string | null,
    values = valuesOf(form),
  ): FormState => ({
    values,
    faults,
    trouble,
    attempt: previous.attempt + 1,
  });
  if (await isElsewhere(form)) return again([], t("otherPlace"));
  const seen = form.get("seen");
  if (now !== undefined && typeof seen === "string") {
    const current = await reached(now);
    if (current === "down") return again([], t("databaseDown"));
    const mark = fingerprint(current);
    if (current !== null && mark !== seen)
      return again([], t("changedSince"), { ...valuesOf(form), seen: [mark] });
  }
  const written = await reached(write);
  if (written === "down") return again([], t("databaseDown"));
  if (written.ok) redirect(next(written.value));
  if (written.why === "conflict") return again([], conflict ?? t("conflict"));
  if (written.why === "not-there") return again([], t("gone"));
  return again(await faultWords(written.faults, names), null);
}

async function reached<T>(write: () => Promise<T>): Promise<T | "down"> {
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
