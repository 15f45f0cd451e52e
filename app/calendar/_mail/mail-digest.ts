import { todayIn } from "../../../lib/calendar/local-date.ts";
import { claimDigest, settleDigest } from "../../../lib/data/reminder-digests.ts";
import { remindersOf } from "../../../lib/data/reminder-facts.ts";
import type { Workspace } from "../../../lib/data/workspaces.ts";
import { standing } from "../../../lib/reminders/marks.ts";
import { type ReminderText, reminderText } from "../../../lib/show/reminder-text.ts";
import { type Names, namesOf } from "../../_workspace/names-of.ts";
import { MAIL_HOUR, type MailSettings } from "./mail-settings.ts";
import { sendMail } from "./send-mail.ts";

/** The words around a digest. */
export type DigestWords = Readonly<{
  locale: string;
  sentence: (text: ReminderText, names: Names) => string;
  subject: (count: number, day: string) => string;
  head: string;
  foot: string;
}>;
export type Outcome = "early" | "nothing-new" | "sent" | "failed";

function hourIn(timeZone: string, now: Date): number {
  return Number(new Intl.DateTimeFormat("en", { timeZone, hour: "2-digit", hourCycle: "h23" }).format(now));
}

/** Mails what no mail of the workspace has said yet, once a day, and keeps how that ended. Nothing is sent twice. */
export async function mailDigest(
  { id: workspaceId, timeZone }: Pick<Workspace, "id" | "timeZone">,
  settings: MailSettings,
  words: DigestWords,
  now: Date,
): Promise<Outcome> {
  if (hourIn(timeZone, now) < MAIL_HOUR) return "early";
  const scope = { workspaceId, actor: "mail" };
  const day = todayIn(timeZone, now);
  const { all, marks, facts } = await remindersOf(scope, day);
  const due = standing(all, marks, day);
  const fresh = await claimDigest(
    scope,
    day,
    due.map(({ key }) => key),
  );
  if (fresh.length === 0) return "nothing-new";
  const names = namesOf(facts);
  const texts = due
    .filter(({ key }) => fresh.includes(key))
    .map((one) => reminderText(one, day, words.locale));
  const lines = texts.map((text) => `- ${words.sentence(text, names)}`);
  const trouble = await sendMail(settings, {
    subject: words.subject(texts.length, day),
    text: [words.head, "", ...lines, "", words.foot, ""].join("\n"),
    id: `reminders-${workspaceId}-${day}`,
  });
  await settleDigest(scope, day, trouble);
  return trouble === null ? "sent" : "failed";
}
