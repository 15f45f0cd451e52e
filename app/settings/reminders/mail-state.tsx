import { getLocale, getTranslations } from "next-intl/server";
import { type Digest, lastDigest } from "../../../lib/data/reminder-digests.ts";
import { dayText, momentText } from "../../../lib/show/day-text.ts";
import { Notice } from "../../_ui/notice.tsx";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { MAIL_HOUR, mailSettings } from "../../calendar/_mail/mail-settings.ts";

async function Last({ digest, timeZone }: Readonly<{ digest: Digest | null; timeZone: string }>) {
  const t = await getTranslations("reminders.settings");
  const locale = await getLocale();
  if (digest === null) return <p>{t("mailNone")}</p>;
  const said = { at: momentText(digest.at, locale, timeZone), day: dayText(digest.day, locale) };
  if (digest.state === "sent") return <p>{t("mailSent", said)}</p>;
  if (digest.state === "sending") return <p>{t("mailSending", said)}</p>;
  return <Notice tone="bad">{t("mailFailed", { ...said, trouble: digest.trouble ?? "" })}</Notice>;
}

/** Whether what is new is mailed, to whom, and how the last mail ended. */
export async function MailState() {
  const t = await getTranslations("reminders.settings");
  const settings = mailSettings(process.env);
  const { kind, timeZone } = await workspaceSeen();
  if (kind === "demo") return <p>{t("mailDemo")}</p>;
  if (settings === "off") return <p>{t("mailOff")}</p>;
  if (settings === "wrong") return <Notice tone="bad">{t("mailWrong")}</Notice>;
  return (
    <>
      <p>{t("mailOn", { to: settings.to, hour: MAIL_HOUR })}</p>
      <Last digest={await lastDigest(await scopeSeen())} timeZone={timeZone} />
    </>
  );
}
