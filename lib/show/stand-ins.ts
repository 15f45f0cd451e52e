import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { RequirementExposure } from "../exposure/exposure-figures.ts";
import type { Requirement } from "../projects/project.ts";
import { standInFactor } from "../projects/stands-in.ts";
import { lockedLots } from "./locked-lots.ts";
import { figureText } from "./money-text.ts";

/** An accepted alternative that counts for a need: of which material, in place of which, and how many of it do the work of one. */
export type StandInText = Readonly<{
  requirementId: string;
  requiredId: string;
  materialId: string;
  factor: string;
}>;

/** A factor has at most so many places. */
const PLACES = 6;

/** Materials that count for some needs as accepted alternatives; the needs' own materials are none. Rounds: the factor for reading. */
export function standInTexts(
  requirements: readonly Requirement[],
  materialIds: Iterable<string>,
  locale: string,
): StandInText[] {
  return [...new Set(materialIds)].flatMap((materialId) =>
    requirements.flatMap((requirement) => {
      const factor = standInFactor(requirement, materialId);
      if (factor === null || materialId === requirement.materialId) return [];
      const { id, materialId: requiredId } = requirement;
      return [{ requirementId: id, requiredId, materialId, factor: figureText(factor, locale, 1, PLACES) }];
    }),
  );
}

/** The same material in place of the same one by the same factor is said once, however many needs it serves. */
export function eachOnce(standIns: readonly StandInText[]): StandInText[] {
  const saying = ({ requiredId, materialId, factor }: StandInText) =>
    [requiredId, materialId, factor].join(" ");
  return [...new Map(standIns.map((one) => [saying(one), one])).values()];
}

/** What stands in for a need: among the offers that would be taken now, and among what is locked in for it. */
export type StandInsOfNeed = Readonly<{ now: readonly StandInText[]; lockedIn: readonly StandInText[] }>;

/** What stands in for each need of some lines on a day (R8). Rounds: factors, for reading. */
export function standInsOfLines(
  lines: readonly RequirementExposure[],
  facts: ExposureFacts,
  day: LocalDate,
  locale: string,
): ReadonlyMap<string, StandInsOfNeed> {
  const known = new Map(facts.requirements.map((need) => [need.id, need]));
  return new Map(
    lines.flatMap(({ requirementId, takes }): [string, StandInsOfNeed][] => {
      const need = known.get(requirementId);
      if (need === undefined || need.alternatives.length === 0) return [];
      const taken = takes.map(({ offer }) => offer.materialId);
      const held = lockedLots(day, facts, new Set([requirementId]), locale).map((lot) => lot.materialId);
      return [
        [
          requirementId,
          { now: standInTexts([need], taken, locale), lockedIn: standInTexts([need], held, locale) },
        ],
      ];
    }),
  );
}
