import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../../lib/data/facts.ts";
import { project as projectById } from "../../../lib/data/projects.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { isClosedOn, statusOn } from "../../../lib/projects/revisions.ts";
import { comparisonBasis } from "../../../lib/show/comparison-basis.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { standInsOfLines } from "../../../lib/show/stand-ins.ts";
import { DaySwitch } from "../../_ui/day-switch.tsx";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { Caution } from "../../_ui/notice.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { basisWords } from "../../_words/basis-words.ts";
import { dayAsked, type Query } from "../../_workspace/day-asked.ts";
import { idAsked } from "../../_workspace/id-asked.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { Answer } from "./answer.tsx";
import { Basket } from "./basket.tsx";
import { BuyTable } from "./buy-table.tsx";
import { Done } from "./done.tsx";
import { LeftOversLink } from "./left-overs-link.tsx";
import { LotsTable } from "./lots-table.tsx";
import { NeedsTable } from "./needs-table.tsx";
import { SetAsideMeasured } from "./takeoff/set-aside-measured.tsx";
import { WasteDone } from "./waste/waste-done.tsx";
import { WastePart } from "./waste/waste-part.tsx";
import { WholeJob } from "./whole-job.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const found = await projectById(await scopeSeen(), idAsked((await params).id));
  return { title: found?.name };
}

/** A project: what it still costs and why, what is locked in, what to buy where. */
export default async function ProjectPage({ params, searchParams }: Props) {
  const id = idAsked((await params).id);
  const { day, today } = await dayAsked(searchParams);
  const facts = await exposureFacts(await scopeSeen(), day, id);
  const project = facts.projects.find((known) => known.id === id);
  if (project === undefined) notFound();
  const t = await getTranslations("projects");
  const words = await getTranslations("today");
  const measure = await getTranslations("takeoff");
  const figures = exposure(day, facts).projects.find((known) => known.projectId === id);
  const names = namesOf(facts);
  const locale = await getLocale();
  const basis = (await basisWords())(comparisonBasis("open", facts.valuation, day, locale));
  const own = facts.requirements.filter((requirement) => requirement.projectId === id);
  const lines = figures?.lines ?? [];
  const status = statusOn(project, day);
  const add = `/projects/${id}/needs/new`;
  return (
    <>
      <Done query={searchParams} projectId={id} />
      <WasteDone query={searchParams} projectId={id} />
      <PageHead
        title={project.name}
        up={<Link href="/projects">{t("up")}</Link>}
        answer={
          <>
            {day === today ? null : `${words("titleAsOf", { day: dayText(day, locale) })}. `}
            {figures === undefined ? t("notBegun") : <Answer project={figures} status={status} />}
          </>
        }
        aside={
          <>
            {lines.length === 0 ? null : <LinkButton href={add}>{t("addNeed")}</LinkButton>}
            <LinkButton href={`/projects/${id}/takeoff`}>{measure("link")}</LinkButton>
            <Link href={`/projects/${id}/edit`}>{t("edit")}</Link>
          </>
        }
      />
      {figures === undefined || lines.length === 0 ? (
        <EmptyState
          title={t("emptyNeedsTitle")}
          action={
            <LinkButton kind="main" href={add}>
              {t("addNeed")}
            </LinkButton>
          }
        >
          {t("emptyNeedsText")}
        </EmptyState>
      ) : (
        <>
          <SetAsideMeasured query={searchParams} lines={lines} names={names} day={day} />
          <Part title={t("needs")} note={t("needsNote", { basis })}>
            <NeedsTable
              project={figures}
              day={day}
              names={names}
              standIns={standInsOfLines(lines, facts, day, locale)}
              closed={new Set(own.filter((need) => isClosedOn(need, day)).map((need) => need.id))}
            />
          </Part>
          <WholeJob project={figures} />
          <BuyTable
            project={figures}
            requirements={own}
            day={day}
            names={names}
            valuation={facts.valuation}
          />
          <LotsTable
            facts={facts}
            day={day}
            names={names}
            requirementIds={new Set(own.map((need) => need.id))}
          />
          <LeftOversLink facts={facts} day={day} today={today} projectId={id} />
          <Basket projectId={id} day={day} today={today} query={searchParams} />
          <Caution>{t("caution")}</Caution>
        </>
      )}
      <WastePart projectId={id} project={figures} valuation={facts.valuation} day={day} />
      {project.note ? <p>{project.note}</p> : null}
      <DaySwitch
        path={`/projects/${id}`}
        day={day}
        today={today}
        words={{ label: words("asOf"), show: words("show"), back: words("backToToday") }}
      />
    </>
  );
}
