import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";
import type { Take } from "../prices/offer.ts";

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
  /** costToFinish / open, unrounded; for reading. */
  bestUnitPrice: Money | null;
  takes: readonly Take[];
  uncovered: Decimal;
  unpriced: boolean;
  restsOnStale: Money;
  restsOnLapsing: Money;
  /** Cost when the offers that lapse before neededBy are gone; null when then not covered. */
  costWithoutLapsing: Money | null;
  unrealisedSaving: Money | null;
  budget: Money | null;
  /** Why a conversion or alternative could not be used, for the screen. */
  remarks: readonly string[];
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
  orderCharges: readonly Readonly<{ storeId: string; name: string; amount: Money }>[];
  totals: ExposureTotals;
}>;
export type WorkspaceExposure = Readonly<{
  day: LocalDate;
  projects: readonly ProjectExposure[];
  totals: ExposureTotals;
}>;
