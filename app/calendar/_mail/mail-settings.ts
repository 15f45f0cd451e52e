import * as z from "zod";

/** How mail is sent, to whom and from whom. */
export type MailSettings = Readonly<{ url: string; to: string; from: string }>;

/** Mail is not sent before this hour of the workspace's day. Judgement. */
export const MAIL_HOUR = 6;

const settings = z.object({
  url: z.string().regex(/^smtps?:\/\/[^/\s]+/),
  to: z.email(),
  from: z.email(),
});

/** What SMTP_URL and MAIL_TO (and MAIL_FROM, else MAIL_TO) say; "off": neither is set; "wrong": they cannot be used. */
export function mailSettings(
  given: Readonly<Record<string, string | undefined>>,
): MailSettings | "off" | "wrong" {
  const [url, to] = [given.SMTP_URL?.trim() ?? "", given.MAIL_TO?.trim() ?? ""];
  if (url === "" && to === "") return "off";
  const read = settings.safeParse({ url, to, from: given.MAIL_FROM?.trim() || to });
  return read.success ? read.data : "wrong";
}
