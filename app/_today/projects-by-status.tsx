import { getTranslations } from "next-intl/server";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import type { WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
import type { ProjectStatus } from "../../lib/projects/project.ts";
import { withStatus } from "../../lib/show/today.ts";
import { Part } from "../_ui/page-head.tsx";
import { namesOf } from "../_workspace/names-of.ts";
import { ProjectsTable } from "./projects-table.tsx";

type ByStatus = Readonly<{ exposure: WorkspaceExposure; facts: ExposureFacts; past?: boolean }>;

/** Live projects with their sum, planned ones below it, and with `past` those that no longer buy. Empty parts stay away. */
export async function ProjectsByStatus({ exposure, facts, past = false }: ByStatus) {
  const t = await getTranslations("today");
  const names = namesOf(facts);
  const of = (...statuses: ProjectStatus[]) => withStatus(exposure, facts, statuses).projects;
  const { currency } = exposure.totals.costToFinish;
  const parts = [
    { key: "live", projects: of("live"), totals: exposure.totals, note: t("inCurrency", { currency }) },
    { key: "planned", projects: of("planned"), totals: null, note: t("plannedNote") },
    { key: "past", projects: past ? of("finished", "dropped") : [], totals: null, note: undefined },
  ] as const;
  return parts
    .filter(({ projects }) => projects.length > 0)
    .map(({ key, projects, totals, note }) => (
      <Part key={key} title={t(`jobsBy.${key}`)} note={note}>
        <ProjectsTable caption={t(`jobsBy.${key}`)} projects={projects} names={names} totals={totals} />
      </Part>
    ));
}
