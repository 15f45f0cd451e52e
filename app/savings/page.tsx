import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { SAVING_VIEWS } from "../../lib/savings/savings-by.ts";
import { savingsReport } from "../../lib/savings/savings-report.ts";
import { pageOf } from "../../lib/show/page-of.ts";
import { savingsQuery } from "../../lib/show/savings-asked.ts";
import { savingRows } from "../../lib/show/savings-rows.ts";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { More } from "../_ui/more.tsx";
import { Notice } from "../_ui/notice.tsx";
import { PageHead, Part } from "../_ui/page-head.tsx";
import { SwitchLinks } from "../_ui/switch-links.tsx";
import type { Query } from "../_workspace/day-asked.ts";
import { namesOf } from "../_workspace/names-of.ts";
import { breakdownTable } from "./_report/breakdown-table.ts";
import { contentAsked, valuesOf } from "./_report/content-asked.ts";
import { picture } from "./_report/picture.ts";
import { PictureFigure } from "./_report/picture-figure.tsx";
import { about } from "./_report/sentences.ts";
import { viewTable } from "./_report/view-table.ts";
import { reportWords } from "./_report/worded-report.ts";
import { WordedTable } from "./_report/worded-table.tsx";
import { Answer } from "./answer.tsx";
import { Filter } from "./filter.tsx";
import { Pages } from "./pages.tsx";
import { RowsTable } from "./rows-table.tsx";
import { TotalsTable } from "./totals-table.tsx";

export const dynamic = "force-dynamic";

/** So many rows a page. */
const EACH = 100;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("savings"))("title") };
}

/** Savings: what buying ahead, specials and salvage avoided or lost, each quantity once, with its parts. */
export default async function SavingsPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("savings");
  const words = await reportWords();
  const r = words.t;
  const { content, asked, facts, day, today } = await contentAsked(searchParams);
  if (facts.events.length === 0 && facts.lots.length === 0)
    return (
      <>
        <PageHead title={t("title")} />
        <EmptyState
          title={t("emptyTitle")}
          action={
            <LinkButton kind="main" href="/stock">
              {t("toStock")}
            </LinkButton>
          }
        >
          {t("emptyText")}
        </EmptyState>
      </>
    );
  const values = await valuesOf(searchParams);
  const report = savingsReport(content.rows, content.currency);
  const rows = pageOf(savingRows(report, words.locale), values.page, EACH);
  const seen = picture(content, words);
  const query = savingsQuery(asked, day === today ? null : day);
  return (
    <>
      <PageHead
        title={t("title")}
        answer={<Answer report={report} />}
        aside={
          <>
            <LinkButton kind="main" href={`/savings/report${query}`}>
              {r("toReport")}
            </LinkButton>
            <Link href="/savings/report/saved">{r("saved")}</Link>
          </>
        }
      />
      <Filter asked={asked} day={day} today={today} facts={facts} />
      {content.rate === null && content.noRateFor === null ? null : (
        <Notice tone={content.rate === null ? "warn" : "plain"}>
          <p>{about(content, words).at(-1)}</p>
        </Notice>
      )}
      <Part title={t("totals")} note={`${t("what")} ${t("parts")}.`}>
        {report.rows.some((row) => row.beforeCarrying) ? (
          <Notice tone="warn">
            <p>
              {t("beforeCarryingNote")} <Link href="/settings/workspace">{t("toSettings")}</Link>
            </p>
          </Notice>
        ) : null}
        <TotalsTable report={report} />
      </Part>
      {report.rows.length === 0 ? null : (
        <>
          <Part title={seen.picture.title} note={seen.picture.note}>
            {seen.drawings === null ? (
              <p>{r("pictureNone")}</p>
            ) : (
              <>
                <PictureFigure picture={seen.picture} drawings={seen.drawings} />
                <More title={seen.time.title}>
                  <WordedTable table={seen.time} least="30rem" />
                </More>
              </>
            )}
          </Part>
          <Part title={r("breakdown")} note={r("breakdownNote")}>
            <WordedTable table={breakdownTable(content, words)} least="34rem" />
          </Part>
          <Part title={r(`views.${asked.view}`)} id="by">
            <SwitchLinks
              label={r("viewBy")}
              choices={SAVING_VIEWS.map((view) => ({
                label: r(`views.${view}`),
                href: `/savings${savingsQuery({ ...asked, view }, day === today ? null : day)}#by`,
                current: view === asked.view,
              }))}
            />
            <WordedTable table={viewTable(asked.view, content, words)} least="48rem" />
          </Part>
        </>
      )}
      <Part title={t("rows")} note={t("rowsNote", { currency: content.currency })}>
        {rows.items.length === 0 ? (
          <p>{t("emptyPeriod")}</p>
        ) : (
          <RowsTable rows={rows.items} materials={facts.materials} names={namesOf(facts)} query={query} />
        )}
        {rows.of > 1 ? <Pages page={rows} total={report.rows.length} query={values} /> : null}
      </Part>
    </>
  );
}
