import { localDate } from "../../lib/calendar/local-date.ts";
import { decimal, ZERO } from "../../lib/decimal.ts";
import type {
  ExposureTotals,
  RequirementExposure,
  WorkspaceExposure,
} from "../../lib/exposure/exposure-figures.ts";
import { type Money, money } from "../../lib/money/money.ts";
import type { Offer, Take } from "../../lib/prices/offer.ts";

/** The day of the examples. */
export const DAY = localDate("2026-03-02");

export function cad(amount: string): Money {
  return money(amount, "CAD");
}

export function offer(given: Partial<Offer> = {}): Offer {
  return {
    observationId: "seen-1",
    materialId: "plywood",
    storeId: "mill-road",
    terms: "shelf",
    seenOn: localDate("2026-02-28"),
    ageDays: 2,
    stale: false,
    price: cad("34.15"),
    beforeTax: cad("29.70"),
    cash: cad("34.15"),
    unit: "sheet",
    minQuantity: decimal(1),
    maxQuantity: null,
    packSize: decimal(1),
    lapsesOn: null,
    orderCharges: [],
    beforeImportCharges: false,
    staleRate: false,
    distanceKm: null,
    ...given,
  };
}

export function take(quantity: string, of: Offer = offer()): Take {
  const amount = decimal(quantity);
  return { offer: of, quantity: amount, cost: { amount: of.price.amount.times(amount), currency: "CAD" } };
}

export function line(given: Partial<RequirementExposure> = {}): RequirementExposure {
  return {
    requirementId: "need-1",
    projectId: "workshop",
    materialId: "plywood",
    unit: "sheet",
    neededBy: localDate("2026-06-14"),
    required: decimal(58),
    allocated: decimal(27),
    drawn: ZERO,
    lockedIn: decimal(27),
    onOrder: ZERO,
    open: decimal(31),
    surplus: ZERO,
    lockedCost: cad("799.20"),
    costToFinish: cad("1058.65"),
    bestUnitPrice: cad("34.15"),
    takes: [take("31")],
    uncovered: ZERO,
    unpriced: false,
    restsOnStale: cad("0"),
    restsOnLapsing: cad("0"),
    costWithoutLapsing: null,
    unrealisedSaving: null,
    budget: null,
    remarks: [],
    ...given,
  };
}

export function totals(given: Partial<ExposureTotals> = {}): ExposureTotals {
  return {
    lockedCost: cad("799.20"),
    costToFinish: cad("1058.65"),
    perOrderCharges: cad("0"),
    estimateAtCompletion: cad("1857.85"),
    budget: cad("2000"),
    variance: cad("142.15"),
    unrealisedSaving: cad("122.85"),
    restsOnStale: cad("0"),
    restsOnLapsing: cad("0"),
    unpricedLines: 0,
    tenPercent: cad("105.87"),
    complete: true,
    ...given,
  };
}

export function exposureOf(
  lines: readonly RequirementExposure[],
  given: Partial<ExposureTotals> = {},
): WorkspaceExposure {
  const ids = [...new Set(lines.map((one) => one.projectId))];
  return {
    day: DAY,
    projects: ids.map((projectId) => ({
      projectId,
      lines: lines.filter((one) => one.projectId === projectId),
      pools: [],
      orderCharges: [],
      totals: totals(given),
    })),
    totals: totals(given),
  };
}
