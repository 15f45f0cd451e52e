import { type Decimal, decimal, ONE } from "../../lib/decimal.ts";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import type { Material } from "../../lib/materials/material.ts";
import { money } from "../../lib/money/money.ts";
import type { Project, Requirement, RequirementRevision } from "../../lib/projects/project.ts";
import {
  type Lot,
  NOTHING_AGREED,
  type Paid,
  type StockEvent,
  type StockEventKind,
} from "../../lib/stock/lot.ts";
import { day, SHEET, valuation } from "./price-example.ts";

type Written = string | number | Decimal;

export const cad = (amount: Written) => money(amount, "CAD");
/** The day the lots of the examples were ordered, paid and received. */
export const BOUGHT = day("2026-01-05");

export function paid(amount: Written, given: Partial<Paid> = {}): Paid {
  return {
    amount: decimal(amount),
    currency: "CAD",
    taxIncluded: false,
    taxRegion: null,
    exemptFrom: [],
    fees: [],
    taxes: null,
    ...given,
  };
}

/** Sheets bought at "near" (no tax there) on BOUGHT and received that day. */
export function lotOf(quantity: Written, amount: Written, given: Partial<Lot> = {}): Lot {
  const orderedOn = given.orderedOn ?? BOUGHT;
  return {
    id: "lot",
    materialId: "sheet",
    origin: "bought",
    storeId: "near",
    terms: "shelf",
    observationId: null,
    quantity: decimal(quantity),
    paid: paid(amount),
    paidHome: null,
    orderedOn,
    receipts: [{ quantity: decimal(quantity), on: orderedOn }],
    payments: [],
    condition: ONE,
    placeId: null,
    storedAt: null,
    agreed: NOTHING_AGREED,
    givenFree: null,
    otherCurrency: null,
    note: null,
    ...given,
  };
}

let sequence = 0;

/** Something that happened to the lot "lot"; recorded after everything made before. */
export function eventOf(
  kind: StockEventKind,
  quantity: Written,
  on: string,
  given: Partial<StockEvent> = {},
): StockEvent {
  sequence += 1;
  return {
    id: `event-${sequence}`,
    lotId: "lot",
    kind,
    quantity: decimal(quantity),
    on: day(on),
    requirementId: null,
    amount: null,
    reason: null,
    placeId: null,
    fromPlaceId: null,
    sequence,
    ...given,
  };
}

/** Needs `quantity` sheets, no waste, by 2026-06-01, said on 2026-01-01. */
export function revisionOf(quantity: Written, given: Partial<RequirementRevision> = {}): RequirementRevision {
  return {
    validFrom: day("2026-01-01"),
    quantity: decimal(quantity),
    unit: "sheet",
    wastePercent: decimal(0),
    neededBy: day("2026-06-01"),
    budgetUnitPrice: null,
    acceptsUsed: false,
    ...given,
  };
}

/** A requirement of the project "job" for sheets. */
export function needOf(
  id: string,
  revision: RequirementRevision | readonly RequirementRevision[],
  given: Partial<Requirement> = {},
): Requirement {
  return {
    id,
    projectId: "job",
    materialId: "sheet",
    revisions: [revision].flat(),
    alternatives: [],
    closedOn: null,
    ...given,
  };
}

/** A project that went live on 2026-01-01. */
export function projectOf(id: string, given: Partial<Project> = {}): Project {
  return {
    id,
    name: id,
    statuses: [{ status: "live", from: day("2026-01-01") }],
    budget: null,
    note: null,
    ...given,
  };
}

/** The one project "job", sheets, and nothing seen, needed or bought yet. */
export function factsOf(
  given: Partial<Omit<ExposureFacts, "materials">> & { materials?: readonly Material[] } = {},
): ExposureFacts {
  const { materials = [SHEET], ...rest } = given;
  return {
    valuation: valuation(),
    projects: [projectOf("job")],
    requirements: [],
    observations: [],
    lots: [],
    events: [],
    moneyRates: [],
    ...rest,
    materials: new Map(materials.map((material) => [material.id, material])),
  };
}

/** Seven per cent a year, since ever. */
export const SEVEN_PERCENT = [{ percent: decimal(7), from: null }];
