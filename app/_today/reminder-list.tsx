import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { Reminder } from "../../lib/reminders/reminder.ts";
import { putOffDays, reminderPlace, reminderText } from "../../lib/show/reminder-text.ts";
import { newId } from "../_forms/new-id.ts";
import { Button } from "../_ui/button.client.tsx";
import { ChoiceField } from "../_ui/choice-field.client.tsx";
import { Form } from "../_ui/form.client.tsx";
import { Below } from "../_ui/money-text.tsx";
import { reminderWords } from "../_words/reminder-words.ts";
import type { Names } from "../_workspace/names-of.ts";
import { markReminderForm } from "./reminder-actions.ts";
import style from "./reminders.module.css";

type ListOf = Readonly<{ reminders: readonly Reminder[]; names: Names; day: LocalDate }>;

/** Reminders, each with what can be done with it. */
export async function ReminderList({ reminders, names, day }: ListOf) {
  const t = await getTranslations("reminders");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const say = await reminderWords();
  const days = putOffDays(day, locale).map(({ until, text, days: ahead }) => ({
    value: until,
    label: t("inDays", { day: text, days: ahead }),
  }));
  return (
    <ul className={style.list}>
      {reminders.map((reminder) => {
        const text = reminderText(reminder, day, locale);
        const sentence = say(text, names);
        const { daysLeft } = text;
        return (
          <li key={text.key} className={style.one}>
            <p>
              <Link href={reminderPlace(text)}>{sentence}</Link>
              <Below>
                {daysLeft < 0 ? t("ago", { days: Math.abs(daysLeft) }) : t("when", { days: daysLeft })}
              </Below>
            </p>
            <Form
              action={markReminderForm}
              id={newId()}
              faultsTitle={ui("faultsTitle")}
              className={style.act ?? ""}
            >
              <input type="hidden" name="key" value={text.key} />
              <ChoiceField name="until" label={t("until")} choices={days} start={days[0]?.value ?? ""} />
              <Button kind="plain" name="kind" value="snoozed" label={t("putOffOf", { reminder: sentence })}>
                {t("putOff")}
              </Button>
              <Button kind="plain" name="kind" value="done" label={t("doneOf", { reminder: sentence })}>
                {t("done")}
              </Button>
            </Form>
          </li>
        );
      })}
    </ul>
  );
}
