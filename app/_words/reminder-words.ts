import { getTranslations } from "next-intl/server";
import type { ReminderText } from "../../lib/show/reminder-text.ts";
import type { Names } from "../_workspace/names-of.ts";
import { unitWords } from "./unit-words.ts";

/** One reminder as a sentence. */
export type SayReminder = (text: ReminderText, names: Names) => string;

/** Reminders as sentences in the language of the request. */
export async function reminderWords(): Promise<SayReminder> {
  const t = await getTranslations("reminders.line");
  const units = await unitWords();
  return (text, names) =>
    t(text.kind, {
      material: names.material(text.materialId),
      store: text.storeId === null ? "–" : names.store(text.storeId),
      project: text.projectId === null ? "–" : names.project(text.projectId),
      one: units.one(text.unit),
      units: units.of(text.unit, text.quantityExact),
      each: text.each,
      wanted: text.wanted,
      money: text.money,
      quantity: text.quantity,
      day: text.day,
    });
}
