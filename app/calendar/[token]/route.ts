import { getLocale, getTranslations } from "next-intl/server";
import { todayIn } from "../../../lib/calendar/local-date.ts";
import { remindersOf } from "../../../lib/data/reminder-facts.ts";
import { workspaceOfFeed } from "../../../lib/data/reminder-feed.ts";
import { placed } from "../../../lib/reminders/marks.ts";
import { reminderPlace, reminderText } from "../../../lib/show/reminder-text.ts";
import { openness } from "../../_gate/caller-of.ts";
import { whence } from "../../_gate/whence.ts";
import { reminderWords } from "../../_words/reminder-words.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { feedFile } from "../_feed/feed-file.ts";

/** The reminders for a calendar that brings the word of its address; whoever brings another finds nothing. */
export async function GET(
  request: Request,
  { params }: RouteContext<"/calendar/[token]">,
): Promise<Response> {
  const workspace = await workspaceOfFeed((await params).token.replace(/\.ics$/, ""));
  if (workspace === null)
    return new Response("There is no calendar at this address.", {
      status: 404,
      headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
    });
  const day = todayIn(workspace.timeZone, new Date());
  const scope = { workspaceId: workspace.id, actor: "calendar", readOnly: true };
  const { all, marks, facts } = await remindersOf(scope, day);
  const t = await getTranslations("reminders");
  const locale = await getLocale();
  const say = await reminderWords();
  const names = namesOf(facts);
  const origin = whence(request.headers, openness())?.origin ?? null;
  const file = feedFile(placed(all, marks), {
    name: t("calendarName", { workspace: workspace.name }),
    timeZone: workspace.timeZone,
    sentence: ({ reminder }) => say(reminderText(reminder, day, locale), names),
    address: ({ reminder }) =>
      origin === null ? null : `${origin}${reminderPlace(reminderText(reminder, day, locale))}`,
  });
  return new Response(file, {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": 'inline; filename="dunnage.ics"',
      "cache-control": "private, no-cache",
    },
  });
}
