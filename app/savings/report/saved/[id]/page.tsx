import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { savingsReportFacts } from "../../../../../lib/data/savings-facts.ts";
import { savedReport } from "../../../../../lib/data/savings-saved.ts";
import { changedSince } from "../../../../../lib/savings/changed-since.ts";
import { reportContent } from "../../../../../lib/savings/report-content.ts";
import { momentText } from "../../../../../lib/show/day-text.ts";
import { savingsQuery } from "../../../../../lib/show/savings-asked.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Notice } from "../../../../_ui/notice.tsx";
import { PageHead } from "../../../../_ui/page-head.tsx";
import { UndoBar } from "../../../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../../../_workspace/day-asked.ts";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, workspaceSeen } from "../../../../_workspace/workspace-seen.ts";
import { Files } from "../../../_report/files.tsx";
import style from "../../../_report/report.module.css";
import { ReportView, Said } from "../../../_report/report-view.tsx";
import { reportWords, wordedReport } from "../../../_report/worded-report.ts";
import { deleteReportForm, undeleteReportForm } from "../../actions.ts";
import { Since } from "./since.tsx";

export const dynamic = "force-dynamic";

type SavedProps = Readonly<{ params: Promise<Readonly<{ id: string }>>; searchParams: Query }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("savingsReport"))("title") };
}

/** A kept report with its figures as they were, and what is other now. */
export default async function SavedReportPage({ params, searchParams }: SavedProps) {
  const scope = await scopeSeen();
  const kept = await savedReport(scope, idAsked((await params).id));
  if (kept === null) notFound();
  const { content } = kept;
  const facts = await savingsReportFacts(scope, null, content.asked);
  const now = reportContent(content.asked, facts);
  const words = await reportWords();
  const report = wordedReport(content, words, kept.madeOn);
  const { t, locale } = words;
  const { timeZone } = await workspaceSeen();
  const done = await asked(searchParams, "done");
  const id = <input type="hidden" name="id" value={kept.id} />;
  return (
    <>
      {done === "kept" || done === "back" ? (
        <UndoBar>{t(done === "kept" ? "doneKept" : "doneBack")}</UndoBar>
      ) : null}
      {kept.deletedAt === null ? null : (
        <Notice tone="warn">
          <form action={undeleteReportForm}>
            {id}
            <p>{t("deletedHead")}</p>
            <Button kind="plain">{t("bringBack")}</Button>
          </form>
        </Notice>
      )}
      <PageHead
        up={<Link href="/savings/report/saved">{t("saved")}</Link>}
        title={report.title}
        answer={report.headline.map((sentence) => (
          <span key={sentence.join("")}>
            <Said sentence={sentence} />{" "}
          </span>
        ))}
      />
      <div className={style.about}>
        <p>{t("savedHead", { at: momentText(kept.at, locale, timeZone) })}</p>
        {report.about.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <Files query={`?saved=${kept.id}`}>
        <Link
          href={`/savings/report${savingsQuery({ ...content.asked, view: "project" }, content.asked.day)}`}
        >
          {t("openNow")}
        </Link>
        {kept.deletedAt === null ? (
          <form action={deleteReportForm}>
            {id}
            <Button kind="quiet">{t("delete")}</Button>
          </form>
        ) : null}
      </Files>
      <Since since={changedSince(content, now)} names={{ ...now.names, ...content.names }} />
      <ReportView report={report} whyPath={null} none={t("pictureNone")} meaning={t("definitions")} />
    </>
  );
}
