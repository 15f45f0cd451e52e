import { createTransport } from "nodemailer";
import type { MailSettings } from "./mail-settings.ts";

/** No server is waited for longer than this. */
const PATIENCE = 20_000;

export type Mail = Readonly<{ subject: string; text: string; id: string }>;

/** The server's code alone: its words may repeat the password or the address. */
function troubleIn(error: unknown): string {
  if (typeof error !== "object" || error === null) return "unknown";
  const { code, responseCode } = error as Readonly<{ code?: unknown; responseCode?: unknown }>;
  const said = [code, responseCode].filter((one) => typeof one === "string" || typeof one === "number");
  return said.length === 0 ? "unknown" : said.join(" ");
}

/** Hands one mail to the server; null, or why it could not. */
export async function sendMail(
  { url, to, from }: MailSettings,
  { subject, text, id }: Mail,
): Promise<string | null> {
  const waits = { connectionTimeout: PATIENCE, greetingTimeout: PATIENCE, socketTimeout: PATIENCE };
  try {
    const transport = createTransport({ url, ...waits });
    await transport.sendMail({ from, to, subject, text, messageId: `<${id}@dunnage.invalid>` });
    transport.close();
    return null;
  } catch (error) {
    return troubleIn(error);
  }
}
