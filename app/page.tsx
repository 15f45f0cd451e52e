import type { Metadata } from "next";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts, savingsFacts } from "../lib/data/facts.ts";
import { exposure } from "../lib/exposure/exposure.ts";
import type { ExposureFacts } from "../lib/exposure/exposure-facts.ts";
import { savings } from "../lib/savings/savings.ts";
import { dayText } from "../lib/show/day-text.ts";
import { withStatus } from "../lib/show/today.ts";
import { Answer } from "./_today/answer.tsx";
import { FirstStep, type Step } from "./_today/first-step.tsx";
import { NeededTable } from "./_today/needed-table.tsx";
import { OfferTables } from "./_today/offer-tables.tsx";
import { PriceFellTable } from "./_today/price-fell.tsx";
import { ProjectsByStatus } from "./_today/projects-by-status.tsx";
import { Reminders } from "./_today/reminders.tsx";
import { Saved } from "./_today/saved.tsx";
import { DaySwitch } from "./_ui/day-switch.tsx";
import { LinkButton } from "./_ui/link-button.tsx";
import { PageHead } from "./_ui/page-head.tsx";
import { dayAsked, type Query } from "./_workspace/day-asked.ts";
import { namesOf } from "./_workspace/names-of.ts";
import { scopeSeen, workspaceSeen } from "./_workspace/workspace-seen.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("today"))("title") };
}

function firstStep(facts: ExposureFacts): Step | null {
  if (facts.valuation.stores.size === 0) return "store";
  if (facts.materials.size === 0) return "material";
  if (facts.projects.length === 0) return "project";
  return facts.requirements.length === 0 ? "need" : null;
}

/** Today: what is still to buy over all jobs, what presses, and what buying ahead has saved. */
export default async function TodayPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const { day, today } = await dayAsked(searchParams);
  const scope = await scopeSeen();
  const [facts, past, workspace] = await Promise.all([
    exposureFacts(scope, day),
    savingsFacts(scope, null, day),
    workspaceSeen(),
  ]);
  const t = await getTranslations("today");
  const step = firstStep(facts);
  const demo = workspace.kind === "demo";
  if (step !== null)
    return (
      <>
        <PageHead title={t("title")} />
        <FirstStep step={step} projectId={facts.projects[0]?.id} demo={demo} />
      </>
    );
  const figures = exposure(day, facts);
  const names = namesOf(facts);
  const title = day === today ? t("title") : t("titleAsOf", { day: dayText(day, await getLocale()) });
  return (
    <>
      <PageHead
        title={title}
        answer={<Answer live={withStatus(figures, facts, ["live"])} names={names} />}
        aside={
          <LinkButton kind="main" href="/log">
            {t("logPrice")}
          </LinkButton>
        }
      />
      <ProjectsByStatus exposure={figures} facts={facts} />
      {day === today ? <Reminders day={day} query={searchParams} /> : null}
      <OfferTables exposure={figures} names={names} valuation={facts.valuation} />
      <PriceFellTable day={day} />
      <NeededTable exposure={figures} names={names} />
      <Saved report={savings(null, day, day, past)} />
      <DaySwitch
        path="/"
        day={day}
        today={today}
        words={{ label: t("asOf"), show: t("show"), back: t("backToToday") }}
      />
    </>
  );
}
