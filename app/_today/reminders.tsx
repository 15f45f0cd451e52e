import { getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { remindersOf } from "../../lib/data/reminder-facts.ts";
import { standing } from "../../lib/reminders/marks.ts";
import { Part } from "../_ui/page-head.tsx";
import { UndoBar } from "../_ui/undo-bar.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { namesOf } from "../_workspace/names-of.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { redoReminderForm, undoReminderForm } from "./reminder-actions.ts";
import { ReminderList } from "./reminder-list.tsx";

/** So many stand in sight; the later ones are folded away. */
const IN_SIGHT = 5;
const TOLD = ["done", "snoozed", "undone"] as const;

async function Told({ query }: Readonly<{ query: Query }>) {
  const t = await getTranslations("reminders.told");
  const ui = await getTranslations("ui");
  const [word, id] = [await asked(query, "reminder"), await asked(query, "mark")];
  const told = TOLD.find((one) => one === word);
  if (told === undefined || id === undefined) return null;
  const action = told === "undone" ? redoReminderForm : undoReminderForm;
  return <UndoBar undo={{ action, fields: { id }, label: ui("undo") }}>{t(told)}</UndoBar>;
}

/** What stands to be reminded of today, with what was done last. Nothing when there is nothing. */
export async function Reminders({ day, query }: Readonly<{ day: LocalDate; query: Query }>) {
  const t = await getTranslations("reminders");
  const { all, marks, facts } = await remindersOf(await scopeSeen(), day);
  const now = standing(all, marks, day);
  const told = await Told({ query });
  if (now.length === 0 && told === null) return null;
  const names = namesOf(facts);
  const [first, later] = [now.slice(0, IN_SIGHT), now.slice(IN_SIGHT)];
  return (
    <Part title={t("title")} note={t("note")} id="reminders">
      {told}
      {first.length === 0 ? null : <ReminderList reminders={first} names={names} day={day} />}
      {later.length === 0 ? null : (
        <details>
          <summary>{t("more", { count: later.length })}</summary>
          <ReminderList reminders={later} names={names} day={day} />
        </details>
      )}
    </Part>
  );
}
