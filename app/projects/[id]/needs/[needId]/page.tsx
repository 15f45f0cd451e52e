import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../../../../lib/data/facts.ts";
import { materialsOf } from "../../../../../lib/data/materials.ts";
import { exposure } from "../../../../../lib/exposure/exposure.ts";
import { isClosedOn, revisionOn } from "../../../../../lib/projects/revisions.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { PageHead, Part } from "../../../../_ui/page-head.tsx";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";
import { closeNeed, reopenNeed } from "../../../need-actions.ts";
import { FromTakeoff } from "../../takeoff/from-takeoff.tsx";
import { ChangeNeed } from "./change-need.tsx";
import { NeedAnswer } from "./need-answer.tsx";
import { NeedHistory } from "./need-history.tsx";
import { SetAside } from "./set-aside.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string; needId: string }> }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("projects"))("needTitle") };
}

/** One need of a project: how it stands, free stock for it, a change of it, closing it. */
export default async function NeedPage({ params }: Props) {
  const t = await getTranslations("projects");
  const { id, needId } = await params;
  const projectId = idAsked(id);
  const scope = await scopeSeen();
  const day = await today();
  const [facts, materials] = await Promise.all([exposureFacts(scope, day, projectId), materialsOf(scope)]);
  const need = facts.requirements.find((one) => one.id === idAsked(needId) && one.projectId === projectId);
  const material = need && facts.materials.get(need.materialId);
  const revision = need && (revisionOn(need, day) ?? need.revisions[0]);
  if (need === undefined || material === undefined || revision === undefined) notFound();
  const project = facts.projects.find((known) => known.id === projectId);
  const line = exposure(day, facts)
    .projects.find((known) => known.projectId === projectId)
    ?.lines.find((one) => one.requirementId === need.id);
  const isClosed = isClosedOn(need, day);
  return (
    <>
      <PageHead
        title={material.name}
        up={<Link href={`/projects/${projectId}`}>{project?.name}</Link>}
        answer={
          isClosed && need.closedOn !== null
            ? t("closedOn", { day: dayText(need.closedOn, await getLocale()) })
            : line && <NeedAnswer line={line} day={day} />
        }
        aside={<Link href={`/materials/${material.id}`}>{t("toMaterial")}</Link>}
      />
      <FromTakeoff needId={need.id} unit={material.purchaseUnit} />
      {line && !line.open.isZero() ? (
        <SetAside need={need} open={line.open} materials={facts.materials} day={day} />
      ) : null}
      <Part title={t("change")} note={t("changeNeedNote")}>
        <ChangeNeed
          need={need}
          revision={revision}
          material={material}
          materials={materials}
          currency={facts.valuation.homeCurrency}
        />
      </Part>
      {need.revisions.length > 1 ? (
        <Part title={t("history")}>
          <NeedHistory revisions={need.revisions} />
        </Part>
      ) : null}
      <Part title={isClosed ? t("reopen") : t("close")} note={isClosed ? null : t("closeNote")}>
        <form action={isClosed ? reopenNeed : closeNeed}>
          <input type="hidden" name="id" value={need.id} />
          <input type="hidden" name="projectId" value={projectId} />
          <Button kind="plain" pending={t("saving")}>
            {isClosed ? t("reopen") : t("close")}
          </Button>
        </form>
      </Part>
    </>
  );
}
