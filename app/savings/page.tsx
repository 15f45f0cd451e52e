import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { savingsFacts } from "../../lib/data/facts.ts";
import { savings } from "../../lib/savings/savings.ts";
import { pageOf } from "../../lib/show/page-of.ts";
import { narrowedSavings, savingsAsked } from "../../lib/show/savings-asked.ts";
import { savingRows } from "../../lib/show/savings-rows.ts";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { Notice } from "../_ui/notice.tsx";
import { PageHead, Part } from "../_ui/page-head.tsx";
import { dayAsked, type Query } from "../_workspace/day-asked.ts";
import { namesOf } from "../_workspace/names-of.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
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
  const locale = await getLocale();
  const { day, today } = await dayAsked(searchParams);
  const facts = await savingsFacts(await scopeSeen(), null, day);
  const query = Object.fromEntries(
    Object.entries(await searchParams).map(([name, value]) => [
      name,
      (Array.isArray(value) ? value[0] : value) || undefined,
    ]),
  );
  const asked = savingsAsked(query);
  const report = narrowedSavings(savings(asked.from, asked.until, day, facts), asked);
  const names = namesOf(facts);
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
  const rows = pageOf(savingRows(report, locale), query.page, EACH);
  return (
    <>
      <PageHead title={t("title")} answer={<Answer report={report} />} />
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
      <Part title={t("rows")} note={t("rowsNote", { currency: facts.valuation.homeCurrency })}>
        <Filter asked={asked} day={day} today={today} facts={facts} />
        {rows.items.length === 0 ? (
          <p>{t("emptyPeriod")}</p>
        ) : (
          <RowsTable rows={rows.items} materials={facts.materials} names={names} />
        )}
        {rows.of > 1 ? <Pages page={rows} total={report.rows.length} query={query} /> : null}
      </Part>
    </>
  );
}
