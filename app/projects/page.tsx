import type { Metadata } from "next";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../lib/data/facts.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import { totalsText } from "../../lib/show/exposure-totals-text.ts";
import { jobsStillBuying, withStatus } from "../../lib/show/today.ts";
import { ProjectsByStatus } from "../_today/projects-by-status.tsx";
import { DaySwitch } from "../_ui/day-switch.tsx";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { PageHead } from "../_ui/page-head.tsx";
import { said } from "../_ui/said.tsx";
import { dayAsked, type Query } from "../_workspace/day-asked.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("projects"))("title") };
}

/** All projects: what each still costs, and those that no longer buy. */
export default async function ProjectsPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("projects");
  const today = await getTranslations("today");
  const asked = await dayAsked(searchParams);
  const facts = await exposureFacts(await scopeSeen(), asked.day);
  const add = (
    <LinkButton kind={facts.projects.length === 0 ? "main" : "plain"} href="/projects/new">
      {t("new")}
    </LinkButton>
  );
  if (facts.projects.length === 0)
    return (
      <>
        <PageHead title={t("title")} />
        <EmptyState title={t("emptyTitle")} action={add}>
          {t("emptyText")}
        </EmptyState>
      </>
    );
  const figures = exposure(asked.day, facts);
  const live = withStatus(figures, facts, ["live"]);
  const totals = totalsText(figures.totals, await getLocale());
  const jobs = jobsStillBuying(live);
  return (
    <>
      <PageHead
        title={t("title")}
        answer={
          live.projects.length === 0
            ? today("noLive")
            : jobs === 0
              ? t("answerNothing")
              : t.rich("answer", {
                  complete: totals.complete ? "yes" : "no",
                  amount: totals.costToFinish,
                  currency: totals.currency,
                  jobs,
                  locked: totals.lockedCost,
                  b: said,
                })
        }
        aside={add}
      />
      <ProjectsByStatus exposure={figures} facts={facts} past />
      <DaySwitch
        path="/projects"
        {...asked}
        words={{ label: today("asOf"), show: today("show"), back: today("backToToday") }}
      />
    </>
  );
}
