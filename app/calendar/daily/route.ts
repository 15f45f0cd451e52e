import { createHash, timingSafeEqual } from "node:crypto";
import { getLocale, getTranslations } from "next-intl/server";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { ownerWorkspace } from "../../../lib/data/workspaces.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { reminderWords } from "../../_words/reminder-words.ts";
import { mailDigest } from "../_mail/mail-digest.ts";
import { mailSettings } from "../_mail/mail-settings.ts";

const digest = (text: string) => createHash("sha256").update(text).digest();

/** The launcher's own word, made anew at each start and known to it and to the pages alone. */
function isLauncher(request: Request): boolean {
  const word = process.env.DUNNAGE_DAILY_SECRET ?? "";
  const brought = request.headers.get("x-dunnage-daily") ?? "";
  return word !== "" && timingSafeEqual(digest(word), digest(brought));
}

/** Asked by the launcher soon after the start and each hour: mails what is new, where mail is set and the day has had none. */
export async function POST(request: Request): Promise<Response> {
  if (!isLauncher(request)) return new Response("Not there.", { status: 404 });
  const settings = mailSettings(process.env);
  if (settings === "off" || settings === "wrong") return Response.json({ mail: settings });
  const t = await getTranslations("reminders.mail");
  const locale = await getLocale();
  const mail = await mailDigest(
    await ownerWorkspace(),
    settings,
    {
      locale,
      sentence: await reminderWords(),
      subject: (count, day) => t("subject", { count, day: dayText(localDate(day), locale) }),
      head: t("head"),
      foot: t("foot"),
    },
    new Date(),
  );
  return Response.json({ mail });
}
