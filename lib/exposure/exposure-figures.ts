import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { CONVERSION_REFUSALS } from "../materials/convert.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";
import type { Take } from "../prices/offer.ts";

/** Why a figure of a line is not whole. The conversion refusals: the required quantity cannot be read in purchase units. */
export const EXPOSURE_REMARKS = [
  ...CONVERSION_REFUSALS,
  /** A lot locked in for it has a cost that cannot be said (tax, region or rate not known). */
  "lot-cost-unknown",
  /** A lot of a material that is not (or no longer) accepted is locked in: its cost counts, its quantity does not. */
  "other-material-locked-in",
] as const;
export type ExposureRemark = (typeof EXPOSURE_REMARKS)[number];

/** One requirement against what is locked in and what finishing costs, on a day. Quantities in purchase units; money in home currency. */
export type RequirementExposure = Readonly<{
  requirementId: string;
  projectId: string;
  materialId: string;
  unit: PurchaseUnit;
  neededBy: LocalDate;
  required: Decimal;
  allocated: Decimal;
  drawn: Decimal;
  lockedIn: Decimal;
  /** Of lockedIn: ordered, not received yet: price-safe, not delivery-safe. */
  onOrder: Decimal;
  open: Decimal;
  surplus: Decimal;
  lockedCost: Money;
  /** This requirement's share of its pool, to the cent; null when nothing covers any of it. */
  costToFinish: Money | null;
  /** costToFinish / (open - uncovered), unrounded; for reading. */
  bestUnitPrice: Money | null;
  /** This requirement's share of its pool's takes, by quantity; what to buy as a whole stands in the project's pools. */
  takes: readonly Take[];
  uncovered: Decimal;
  /** Some of what is open, or all of it, has no price; or what is open cannot be said. */
  unpriced: boolean;
  restsOnStale: Money;
  restsOnLapsing: Money;
  /** Cost when the offers that lapse before neededBy are gone; null when then not covered. */
  costWithoutLapsing: Money | null;
  unrealisedSaving: Money | null;
  budget: Money | null;
  /** Why a conversion or alternative could not be used, for the screen. */
  remarks: readonly ExposureRemark[];
}>;

/** What a project would buy of one material, all its open requirements together. Quantities in the material's purchase units. */
export type PoolToBuy = Readonly<{
  materialId: string;
  unit: PurchaseUnit;
  requirementIds: readonly string[];
  quantity: Decimal;
  /** Offers in whole packs; of an accepted alternative in that material's own units. */
  takes: readonly Take[];
  cost: Money;
  /** Bought beyond the quantity because that is cheaper: stock to come. */
  over: Decimal;
  uncovered: Decimal;
}>;

export type ExposureTotals = Readonly<{
  lockedCost: Money;
  costToFinish: Money;
  perOrderCharges: Money;
  estimateAtCompletion: Money;
  budget: Money | null;
  /** budget - estimate, positive is under; null when incomplete or no budget. */
  variance: Money | null;
  /** null when a going price is not known for some allocated stock. */
  unrealisedSaving: Money | null;
  restsOnStale: Money;
  restsOnLapsing: Money;
  unpricedLines: number;
  /** What costToFinish moves by when every price moves ten percent. */
  tenPercent: Money;
  complete: boolean;
}>;

export type ProjectExposure = Readonly<{
  projectId: string;
  lines: readonly RequirementExposure[];
  pools: readonly PoolToBuy[];
  orderCharges: readonly Readonly<{ storeId: string; name: string; amount: Money }>[];
  totals: ExposureTotals;
}>;

/** Every project on a day; totals over the live ones only. */
export type WorkspaceExposure = Readonly<{
  day: LocalDate;
  projects: readonly ProjectExposure[];
  totals: ExposureTotals;
}>;
