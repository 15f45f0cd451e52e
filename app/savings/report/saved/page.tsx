import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { savedReports } from "../../../../lib/data/savings-saved.ts";
import { isCurrencyCode } from "../../../../lib/money/currencies.ts";
import { money } from "../../../../lib/money/money.ts";
import { dayText, momentText } from "../../../../lib/show/day-text.ts";
import { moneyText } from "../../../../lib/show/money-text.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { EmptyState } from "../../../_ui/empty-state.tsx";
import { LinkButton } from "../../../_ui/link-button.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { Table } from "../../../_ui/table.tsx";
import { UndoBar } from "../../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { scopeSeen, workspaceSeen } from "../../../_workspace/workspace-seen.ts";
import { deleteReportForm, undeleteReportForm } from "../actions.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("savingsReport"))("saved") };
}

/** Kept reports, each with its headline as it was. */
export default async function SavedPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("savingsReport");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const reports = await savedReports(await scopeSeen());
  const { timeZone } = await workspaceSeen();
  const id = (await asked(searchParams, "report")) ?? "";
  const figure = (digits: string, code: string) =>
    isCurrencyCode(code) ? moneyText(money(digits, code), locale, { signed: true }) : digits;
  return (
    <>
      {(await asked(searchParams, "done")) === "deleted" ? (
        <UndoBar undo={{ action: undeleteReportForm, fields: { id }, label: ui("undo") }}>
          {t("doneDeleted")}
        </UndoBar>
      ) : null}
      <PageHead up={<Link href="/savings/report">{t("title")}</Link>} title={t("saved")} />
      {reports.length === 0 ? (
        <EmptyState
          title={t("saved")}
          action={<LinkButton href="/savings/report">{t("toReport")}</LinkButton>}
        >
          {t("savedNone")}
        </EmptyState>
      ) : (
        <Table
          caption={t("savedNote")}
          cards
          least="34rem"
          columns={[
            { key: "at", label: t("madeAt") },
            { key: "of", label: t("ofWhat") },
            { key: "realised", label: t("keyRealised"), figures: true },
            { key: "strict", label: t("keyStrict"), figures: true },
            { key: "held", label: t("keyHeld"), figures: true },
            { key: "delete", label: t("delete"), quiet: true },
          ]}
          rows={reports.map(({ id: report, at, figures, asked: of }) => ({
            key: report,
            cells: [
              <Link key="open" href={`/savings/report/saved/${report}`}>
                {momentText(at, locale, timeZone)}
              </Link>,
              t("periodShort", {
                from: of.from === null ? t("beginning") : dayText(of.from, locale),
                until: dayText(of.until ?? of.day, locale),
              }),
              `${figure(figures.realised, figures.currency)} ${figures.currency}`,
              figure(figures.strict, figures.currency),
              figure(figures.unrealised, figures.currency),
              <form key="delete" action={deleteReportForm}>
                <input type="hidden" name="id" value={report} />
                <Button kind="quiet">{t("delete")}</Button>
              </form>,
            ],
          }))}
        />
      )}
    </>
  );
}
