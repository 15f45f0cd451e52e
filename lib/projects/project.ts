import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";

export const PROJECT_STATUSES = ["planned", "live", "finished", "dropped"] as const;
export type ProjectStatus = (typeof PROJECT_STATUSES)[number];

/** A job. Its status is dated: the newest on or before a day holds (R11). budget: home currency, all in; it wins over the sum of its lines (R8). */
export type Project = Readonly<{
  id: string;
  name: string;
  statuses: readonly Readonly<{ status: ProjectStatus; from: LocalDate }>[];
  budget: Money | null;
  note: string | null;
}>;

/** What a requirement asked for from a day on. budgetUnitPrice: home currency, all in, per purchase unit of the material. */
export type RequirementRevision = Readonly<{
  validFrom: LocalDate;
  quantity: Decimal;
  unit: PurchaseUnit;
  wastePercent: Decimal;
  neededBy: LocalDate;
  budgetUnitPrice: Money | null;
  acceptsUsed: boolean;
}>;

/** An accepted other material: `factor` of it does the work of one purchase unit of the required one. Added by the user only. */
export type Alternative = Readonly<{ materialId: string; factor: Decimal }>;

/** material x quantity for a project, as dated revisions; closedOn: open is zero from that day on. */
export type Requirement = Readonly<{
  id: string;
  projectId: string;
  materialId: string;
  revisions: readonly RequirementRevision[];
  alternatives: readonly Alternative[];
  closedOn: LocalDate | null;
}>;
