import { getLocale, getTranslations } from "next-intl/server";
import { localDate } from "../../lib/calendar/local-date.ts";
import type { Session } from "../../lib/data/sessions.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { Button } from "../_ui/button.client.tsx";
import { Table } from "../_ui/table.tsx";
import { revokeSession } from "./you/actions.ts";

type SessionsProps = Readonly<{
  sessions: readonly Session[];
  title: string;
  own: string | null;
  back: "you" | "people";
}>;

/** Sessions with a button that ends each. own: the session of this browser. */
export async function SessionsTable({ sessions, title, own, back }: SessionsProps) {
  const t = await getTranslations("signIn");
  const locale = await getLocale();
  const since = (at: Date) => t("since", { day: dayText(localDate(at.toISOString().slice(0, 10)), locale) });
  return (
    <Table
      caption={title}
      captionHidden
      cards
      columns={[
        { key: "who", label: t("name") },
        { key: "where", label: t("sessions"), quiet: true },
        { key: "end", label: t("end"), quiet: true },
      ]}
      rows={sessions.map((session) => ({
        key: session.id,
        cells: [
          session.personName,
          <span key="where">
            {session.id === own ? t("thisOne") : (session.device ?? t("unknownDevice"))}, {session.client},{" "}
            {since(session.since)}
          </span>,
          <form key="end" action={revokeSession}>
            <input type="hidden" name="sessionId" value={session.id} />
            <input type="hidden" name="back" value={back} />
            <Button kind="quiet">{t("end")}</Button>
          </form>,
        ],
      }))}
    />
  );
}
