import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { isBuying, statusOn } from "../projects/revisions.ts";
import { type CountText, countText } from "./count-text.ts";

/** A requirement stock can be set aside or used for, as text. materialIds: its own first, then what may stand in for it. */
export type NeedText = Readonly<{
  requirementId: string;
  projectId: string;
  materialIds: readonly string[];
  unit: PurchaseUnit;
  open: CountText;
  isOpen: boolean;
  neededBy: LocalDate;
}>;

/** The needs of planned and live projects, open ones first, then by needed-by day. Quantities in purchase units. Rounds: for reading. */
export function needsOf(exposure: WorkspaceExposure, facts: ExposureFacts, locale: string): NeedText[] {
  const buying = new Set(
    facts.projects.filter((project) => isBuying(statusOn(project, exposure.day))).map(({ id }) => id),
  );
  const requirements = new Map(facts.requirements.map((requirement) => [requirement.id, requirement]));
  return exposure.projects
    .filter(({ projectId }) => buying.has(projectId))
    .flatMap(({ lines }) => lines)
    .map((line) => ({
      requirementId: line.requirementId,
      projectId: line.projectId,
      materialIds: [
        line.materialId,
        ...(requirements.get(line.requirementId)?.alternatives ?? []).map(({ materialId }) => materialId),
      ],
      unit: line.unit,
      open: countText(line.open, locale),
      isOpen: !line.open.isZero(),
      neededBy: line.neededBy,
    }))
    .sort((a, b) => Number(b.isOpen) - Number(a.isOpen) || a.neededBy.localeCompare(b.neededBy));
}
