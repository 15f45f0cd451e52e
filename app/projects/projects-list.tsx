import { getTranslations } from "next-intl/server";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import type { WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
import { isBuying, statusOn } from "../../lib/projects/revisions.ts";
import { ProjectsTable } from "../_today/projects-table.tsx";
import { Part } from "../_ui/page-head.tsx";
import { namesOf } from "../_workspace/names-of.ts";

/** Projects that buy with their exposure, and below them those that are finished or dropped. */
export async function ProjectsList({
  exposure,
  facts,
}: Readonly<{ exposure: WorkspaceExposure; facts: ExposureFacts }>) {
  const t = await getTranslations("projects");
  const today = await getTranslations("today");
  const names = namesOf(facts);
  const status = new Map(facts.projects.map((project) => [project.id, statusOn(project, exposure.day)]));
  const buying = exposure.projects.filter((one) => isBuying(status.get(one.projectId) ?? null));
  const past = exposure.projects.filter((one) => !isBuying(status.get(one.projectId) ?? null));
  return (
    <>
      <Part
        title={t("table")}
        note={today("inCurrency", { currency: exposure.totals.costToFinish.currency })}
      >
        <ProjectsTable projects={buying} totals={exposure.totals} names={names} />
      </Part>
      {past.length > 0 ? (
        <Part title={t("noLongerBuying")}>
          <ProjectsTable projects={past} totals={null} names={names} />
        </Part>
      ) : null}
    </>
  );
}
