import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { RequirementExposure, WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { ProjectStatus } from "../projects/project.ts";
import { statusOn } from "../projects/revisions.ts";
import { moneyText, quantityText } from "./money-text.ts";
import {
  aboutToLapse,
  type Leaning,
  leanings,
  leaningText,
  NEAR_DAYS,
  staleUnderMoney,
} from "./offers-under-money.ts";

/** A requirement that is open and needed soon, as text. daysLeft below zero: the day has passed. */
export type NeededSoon = Readonly<{
  requirementId: string;
  projectId: string;
  materialId: string;
  unit: PurchaseUnit;
  open: string;
  /** The same as canonical decimal text, to choose the form of a word by. */
  openExact: string;
  toFinish: string | null;
  neededBy: LocalDate;
  daysLeft: number;
}>;

/** The fact that presses most, in the parts of a sentence. */
export type Pressing =
  | Readonly<{
      kind: "lapsing";
      materialId: string;
      storeId: string;
      on: LocalDate;
      money: string;
      daysLeft: number;
    }>
  | Readonly<{ kind: "needed"; need: NeededSoon }>
  | Readonly<{ kind: "stale"; money: string; prices: number }>
  | Readonly<{ kind: "unpriced"; lines: number }>
  | Readonly<{ kind: "none" }>;

/** Days ahead in which a needed-by date is listed. Judgement. */
export const LISTED_DAYS = 45;

function openLines(exposure: WorkspaceExposure): RequirementExposure[] {
  return exposure.projects
    .flatMap((project) => project.lines)
    .filter((line) => !line.open.isZero())
    .sort((a, b) => (a.neededBy < b.neededBy ? -1 : a.neededBy > b.neededBy ? 1 : 0));
}

function neededSoon(line: RequirementExposure, day: LocalDate, locale: string): NeededSoon {
  return {
    requirementId: line.requirementId,
    projectId: line.projectId,
    materialId: line.materialId,
    unit: line.unit,
    open: quantityText(line.open, locale),
    openExact: line.open.toFixed(),
    toFinish: line.costToFinish === null ? null : moneyText(line.costToFinish, locale),
    neededBy: line.neededBy,
    daysLeft: daysBetween(day, line.neededBy),
  };
}

/** Open requirements needed within so many days, or overdue; the earliest first. Units: calendar days. */
export function neededWithin(
  exposure: WorkspaceExposure,
  locale: string,
  days: number = LISTED_DAYS,
): NeededSoon[] {
  return openLines(exposure)
    .map((line) => neededSoon(line, exposure.day, locale))
    .filter((need) => need.daysLeft <= days);
}

function lapsingPart(found: Leaning, day: LocalDate, locale: string): Pressing | null {
  const text = leaningText(found, day, locale);
  if (text.lapsesOn === null || text.daysLeft === null) return null;
  const { materialId, storeId, lapsesOn: on, money, daysLeft } = text;
  return { kind: "lapsing", materialId, storeId, on, money, daysLeft };
}

/**
 * The most urgent certain fact: of the first offer to lapse and the first open need, whichever comes first within
 * NEAR_DAYS (the offer at a tie: it is gone the day after); else money on stale prices; else lines without a price.
 */
export function pressing(exposure: WorkspaceExposure, locale: string): Pressing {
  const all = leanings(exposure);
  const first = aboutToLapse(all, exposure.day)[0];
  const lapsing = first ? lapsingPart(first, exposure.day, locale) : null;
  const need = neededWithin(exposure, locale, NEAR_DAYS)[0];
  if (lapsing?.kind === "lapsing" && (!need || lapsing.daysLeft <= need.daysLeft)) return lapsing;
  if (need) return { kind: "needed", need };
  const stale = staleUnderMoney(all);
  if (stale.length > 0)
    return { kind: "stale", money: moneyText(exposure.totals.restsOnStale, locale), prices: stale.length };
  if (exposure.totals.unpricedLines > 0) return { kind: "unpriced", lines: exposure.totals.unpricedLines };
  return { kind: "none" };
}

/** The same day with only the projects of these statuses on it. The totals stay: they are of the live ones (`exposure`). */
export function withStatus(
  exposure: WorkspaceExposure,
  { projects }: Pick<ExposureFacts, "projects">,
  statuses: readonly ProjectStatus[],
): WorkspaceExposure {
  const wanted = new Set(
    projects
      .filter((project) => statuses.some((status) => status === statusOn(project, exposure.day)))
      .map(({ id }) => id),
  );
  return { ...exposure, projects: exposure.projects.filter(({ projectId }) => wanted.has(projectId)) };
}

/** How many jobs still have something to buy. */
export function jobsStillBuying(exposure: WorkspaceExposure): number {
  return exposure.projects.filter((project) => project.lines.some((line) => !line.open.isZero())).length;
}
