import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { savingsQuery } from "../../../lib/show/savings-asked.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import type { Query } from "../../_workspace/day-asked.ts";
import { contentAsked } from "../_report/content-asked.ts";
import { Files } from "../_report/files.tsx";
import style from "../_report/report.module.css";
import { ReportView, Said } from "../_report/report-view.tsx";
import { reportWords, wordedReport } from "../_report/worded-report.ts";
import { Filter } from "../filter.tsx";
import { keepReportForm } from "./actions.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("savingsReport"))("title") };
}

/** The report of savings: one sheet to read, then tables; for paper, to mail, and as files. */
export default async function ReportPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const { content, asked, facts, day, today } = await contentAsked(searchParams);
  const words = await reportWords();
  const report = wordedReport(content, words, today);
  const query = savingsQuery(asked, day);
  const t = words.t;
  return (
    <>
      <PageHead
        up={<Link href={`/savings${query}`}>{t("back")}</Link>}
        title={report.title}
        answer={report.headline.map((sentence) => (
          <span key={sentence.join("")}>
            <Said sentence={sentence} />{" "}
          </span>
        ))}
      />
      <div className={style.about}>
        {report.about.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <Filter asked={asked} day={day} today={today} facts={facts} path="/savings/report" />
      <Files query={query}>
        <form action={keepReportForm}>
          <input type="hidden" name="id" value={newId()} />
          <input type="hidden" name="query" value={query} />
          <Button kind="plain">{t("saveIt")}</Button>
        </form>
        <Link href="/savings/report/saved">{t("saved")}</Link>
      </Files>
      <p className={style.hint}>
        {t("print")} {t("saveNote")}
      </p>
      <ReportView
        report={report}
        whyPath={`/savings/:row${query}`}
        none={t("pictureNone")}
        meaning={t("definitions")}
      />
    </>
  );
}
