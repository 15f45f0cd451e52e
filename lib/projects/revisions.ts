import { latestOnOrBefore } from "../calendar/as-of.ts";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Project, ProjectStatus, Requirement, RequirementRevision } from "./project.ts";

/**
 * What a requirement asked for on a day: its newest revision valid from that day or earlier; null before the first.
 * Two revisions of one day: the one recorded later. Source: rules.md R8, R11.
 */
export function revisionOn(requirement: Requirement, day: LocalDate): RequirementRevision | null {
  return latestOnOrBefore(requirement.revisions, day, (revision) => revision.validFrom);
}

/** A project's status on a day; null before its first. Two of one day: the one recorded later. Source: rules.md R8, R11. */
export function statusOn(project: Project, day: LocalDate): ProjectStatus | null {
  return latestOnOrBefore(project.statuses, day, (status) => status.from)?.status ?? null;
}

/** True from the day a requirement was closed on, that day counted: nothing more is to be bought for it. Source: rules.md R8. */
export function isClosedOn(requirement: Requirement, day: LocalDate): boolean {
  return requirement.closedOn !== null && requirement.closedOn <= day;
}

/** True while a project may still buy: planned or live. Finished and dropped jobs have nothing open. Source: rules.md R8. */
export function isBuying(status: ProjectStatus | null): boolean {
  return status === "planned" || status === "live";
}
