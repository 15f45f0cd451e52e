import type * as z from "zod";
import { amount, choice, day, days, fields, textAs, withRules } from "../entry-fields.ts";
import { MARK_KINDS } from "./marks.ts";
import { REMINDER_KINDS } from "./reminder.ts";

const KEY = new RegExp(`^(${REMINDER_KINDS.join("|")})(\\.[0-9a-f-]{36})+\\.\\d{4}-\\d{2}-\\d{2}$`);

/** The key of a reminder, as text. Errors: missing, not-text, not-an-id. */
function key() {
  return textAs<string>((text) => (KEY.test(text) ? { value: text } : "not-an-id"));
}

/** A reminder done, or put off until a day. Faults: those of the fields; missing (until) where it is put off without one. */
export const markEntry = withRules(
  fields({ key: key(), kind: choice(MARK_KINDS), until: day().nullable().default(null) }),
  [{ path: "until", code: "missing", broken: ({ kind, until }) => kind === "snoozed" && until === null }],
);
export type MarkEntry = z.infer<typeof markEntry>;

/** "Tell me at or below": an amount in home currency, all in, per purchase unit; null: no longer. Faults: those of an amount. */
export const wantedPriceEntry = fields({ amount: amount().nullable() });
export type WantedPriceEntry = z.infer<typeof wantedPriceEntry>;

/** How long before an offer lapses. Faults: those of days. */
export const reminderSettingEntry = fields({ lapseDays: days() });
export type ReminderSettingEntry = z.infer<typeof reminderSettingEntry>;
