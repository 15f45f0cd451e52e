import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../../../lib/data/facts.ts";
import { exposure } from "../../../../lib/exposure/exposure.ts";
import { projectLeftovers } from "../../../../lib/show/left-over-text.ts";
import { needsOf } from "../../../../lib/show/needs-of.ts";
import { PageHead } from "../../../_ui/page-head.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { namesOf } from "../../../_workspace/names-of.ts";
import { scopeSeen, today } from "../../../_workspace/workspace-seen.ts";
import { MoveOn } from "./move-on.tsx";
import { TakeBack } from "./take-back.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("lotLife"))("over.title") };
}

/** What is over at a project: back to stock in one step, or on to another project. */
export default async function LeftOversPage({ params }: Props) {
  const t = await getTranslations("lotLife");
  const locale = await getLocale();
  const id = idAsked((await params).id);
  const day = await today();
  const facts = await exposureFacts(await scopeSeen(), day);
  const project = facts.projects.find((known) => known.id === id);
  if (project === undefined) notFound();
  const own = facts.requirements.filter((need) => need.projectId === id).map((need) => need.id);
  const { over, draws } = projectLeftovers(own, facts, day, locale);
  const names = namesOf(facts);
  return (
    <>
      <PageHead
        title={t("over.title")}
        up={<Link href={`/projects/${id}`}>{project.name}</Link>}
        answer={t("over.answer", { lots: over.length, draws: draws.length })}
      />
      {over.length + draws.length === 0 ? null : (
        <TakeBack projectId={id} over={over} draws={draws} names={names} day={day} />
      )}
      <MoveOn
        projectId={id}
        over={over}
        needs={needsOf(exposure(day, facts), facts, locale)}
        names={names}
        day={day}
      />
    </>
  );
}
