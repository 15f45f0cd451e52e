import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureTotals, ProjectExposure, RequirementExposure } from "../exposure/exposure-figures.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  exactDigits,
  totalDigits,
  totalDigitsOrNull,
  unitPriceDigits,
} from "./api-fields.ts";
import { apiTakes, takeShape } from "./api-prices.ts";

const lineShape = z.strictObject({
  requirementId: z.string(),
  materialId: z.string(),
  unit: z.string(),
  neededBy: dayShape,
  required: decimalShape,
  allocated: decimalShape,
  drawn: decimalShape,
  lockedIn: decimalShape,
  onOrder: decimalShape,
  open: decimalShape,
  surplus: decimalShape,
  lockedCost: decimalShape,
  bestOffer: z.strictObject({ unitPrice: decimalShape, takes: z.array(takeShape) }).nullable(),
  costToFinish: decimalShape.nullable(),
  uncovered: decimalShape,
  unpriced: z.boolean(),
  restsOnStale: decimalShape,
  restsOnLapsing: decimalShape,
  costWithoutLapsing: decimalShape.nullable(),
  unrealisedSaving: decimalShape.nullable(),
  budget: decimalShape.nullable(),
  remarks: z.array(z.string()),
});

function apiLine(line: RequirementExposure): z.output<typeof lineShape> {
  const { requirementId, materialId, unit, neededBy, unpriced, bestUnitPrice } = line;
  return {
    requirementId,
    materialId,
    unit,
    neededBy,
    required: exactDigits(line.required),
    allocated: exactDigits(line.allocated),
    drawn: exactDigits(line.drawn),
    lockedIn: exactDigits(line.lockedIn),
    onOrder: exactDigits(line.onOrder),
    open: exactDigits(line.open),
    surplus: exactDigits(line.surplus),
    lockedCost: totalDigits(line.lockedCost),
    bestOffer:
      bestUnitPrice === null
        ? null
        : { unitPrice: unitPriceDigits(bestUnitPrice), takes: apiTakes(line.takes) },
    costToFinish: totalDigitsOrNull(line.costToFinish),
    uncovered: exactDigits(line.uncovered),
    unpriced,
    restsOnStale: totalDigits(line.restsOnStale),
    restsOnLapsing: totalDigits(line.restsOnLapsing),
    costWithoutLapsing: totalDigitsOrNull(line.costWithoutLapsing),
    unrealisedSaving: totalDigitsOrNull(line.unrealisedSaving),
    budget: totalDigitsOrNull(line.budget),
    remarks: [...line.remarks],
  };
}

const totalsShape = z.strictObject({
  lockedCost: decimalShape,
  costToFinish: decimalShape,
  perOrderCharges: decimalShape,
  estimateAtCompletion: decimalShape,
  budget: decimalShape.nullable(),
  variance: decimalShape.nullable().describe("budget less estimate; null when a line has no price"),
  unrealisedSaving: decimalShape.nullable(),
  restsOnStale: decimalShape,
  restsOnLapsing: decimalShape,
  unpricedLines: z.int(),
  tenPercent: decimalShape.describe("what cost to finish moves by when every price moves ten percent"),
  complete: z.boolean().describe('false: at least one line has no price, read totals as "at least"'),
});

function apiTotals(totals: ExposureTotals): z.output<typeof totalsShape> {
  return {
    lockedCost: totalDigits(totals.lockedCost),
    costToFinish: totalDigits(totals.costToFinish),
    perOrderCharges: totalDigits(totals.perOrderCharges),
    estimateAtCompletion: totalDigits(totals.estimateAtCompletion),
    budget: totalDigitsOrNull(totals.budget),
    variance: totalDigitsOrNull(totals.variance),
    unrealisedSaving: totalDigitsOrNull(totals.unrealisedSaving),
    restsOnStale: totalDigits(totals.restsOnStale),
    restsOnLapsing: totalDigits(totals.restsOnLapsing),
    unpricedLines: totals.unpricedLines,
    tenPercent: totalDigits(totals.tenPercent),
    complete: totals.complete,
  };
}

export const exposureShape = z.strictObject({
  projectId: z.string(),
  asOf: dayShape,
  currency: currencyShape,
  requirements: z.array(lineShape),
  orderCharges: z.array(z.strictObject({ storeId: z.string(), name: z.string(), amount: decimalShape })),
  totals: totalsShape,
});

/** A project's figures on a day, home currency. Rounds: nothing further; unit prices to 6 places for reading. */
export function apiExposure(project: ProjectExposure, asOf: LocalDate): z.output<typeof exposureShape> {
  return {
    projectId: project.projectId,
    asOf,
    currency: project.totals.costToFinish.currency,
    requirements: project.lines.map(apiLine),
    orderCharges: project.orderCharges.map(({ storeId, name, amount }) => ({
      storeId,
      name,
      amount: totalDigits(amount),
    })),
    totals: apiTotals(project.totals),
  };
}
