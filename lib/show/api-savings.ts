import * as z from "zod";
import { SAVING_CAUSES, savingBreakdown } from "../savings/saving-causes.ts";
import {
  SAVING_KINDS,
  type SavingRow,
  type SavingsReport,
  type SavingTotals,
} from "../savings/savings-figures.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  exactDigits,
  totalDigits,
  totalDigitsOrNull,
} from "./api-fields.ts";

const rowShape = z.strictObject({
  lot: z.string(),
  eventId: z.string().nullable(),
  materialId: z.string(),
  requirementId: z.string().nullable(),
  projectId: z.string().nullable(),
  kind: z.enum(SAVING_KINDS),
  state: z.enum(["realised", "unrealised", "not-known"]),
  quantity: decimalShape,
  acquiredOn: dayShape,
  drawnOn: dayShape.nullable().describe("the day it left; null while held"),
  paid: decimalShape.nullable().describe("null: the lot's tax, region or rate is not known"),
  goingAtAcquisition: decimalShape.nullable(),
  goingAtDraw: decimalShape.nullable(),
  interpolated: z.boolean(),
  received: decimalShape.nullable(),
  discount: decimalShape.nullable(),
  timing: decimalShape.nullable(),
  carrying: decimalShape.nullable(),
  saving: decimalShape.nullable(),
  strictSaving: decimalShape.nullable(),
  source: z.string(),
  missing: z.boolean().describe("written off because it was missed at a count"),
  beforeCarrying: z.boolean(),
});

function apiRow(row: SavingRow): z.output<typeof rowShape> {
  const { lotId, eventId, materialId, requirementId, projectId, kind, state, acquiredOn, interpolated } = row;
  return {
    lot: lotId,
    eventId,
    materialId,
    requirementId,
    projectId,
    kind,
    state,
    quantity: exactDigits(row.quantity),
    acquiredOn,
    drawnOn: row.on,
    paid: totalDigitsOrNull(row.paid),
    goingAtAcquisition: totalDigitsOrNull(row.goingAtAcquisition),
    goingAtDraw: totalDigitsOrNull(row.goingAtDraw),
    interpolated,
    received: totalDigitsOrNull(row.received),
    discount: totalDigitsOrNull(row.discount),
    timing: totalDigitsOrNull(row.timing),
    carrying: totalDigitsOrNull(row.carrying),
    saving: totalDigitsOrNull(row.saving),
    strictSaving: totalDigitsOrNull(row.strictSaving),
    source: row.source,
    missing: row.missing,
    beforeCarrying: row.beforeCarrying,
  };
}

const totalsShape = z.strictObject({
  saving: decimalShape,
  strictSaving: decimalShape,
  discount: decimalShape,
  timing: decimalShape,
  unsplit: decimalShape.describe("before carrying cost, of rows without a split"),
  carrying: decimalShape,
  rows: z.int(),
  notKnown: z.int(),
  strictNotKnown: z.int(),
});

function apiTotals(totals: SavingTotals): z.output<typeof totalsShape> {
  return {
    saving: totalDigits(totals.saving),
    strictSaving: totalDigits(totals.strictSaving),
    discount: totalDigits(totals.discount),
    timing: totalDigits(totals.timing),
    unsplit: totalDigits(totals.unsplit),
    carrying: totalDigits(totals.carrying),
    rows: totals.rows,
    notKnown: totals.notKnown,
    strictNotKnown: totals.strictNotKnown,
  };
}

const breakdownShape = z.array(
  z.strictObject({
    cause: z.enum(SAVING_CAUSES),
    realised: decimalShape,
    unrealised: decimalShape,
    amount: decimalShape.describe("realised and unrealised together"),
    rows: z.int(),
  }),
);

export const savingsShape = z.strictObject({
  from: dayShape.nullable(),
  to: dayShape.nullable(),
  asOf: dayShape,
  currency: currencyShape,
  rows: z.array(rowShape),
  totals: z.strictObject({
    realised: totalsShape,
    unrealised: totalsShape,
    byKind: z.partialRecord(z.enum(SAVING_KINDS), totalsShape),
  }),
  breakdown: breakdownShape.describe("what made the saving; the lines add up to it exactly"),
});
type Asked = Pick<z.output<typeof savingsShape>, "from" | "to" | "asOf">;

/** What buying ahead saved, row by row and in total, home currency. Rounds: nothing further (R10). */
export function apiSavings(report: SavingsReport, asked: Asked): z.output<typeof savingsShape> {
  const kinds = SAVING_KINDS.flatMap((kind) => {
    const totals = report.byKind[kind];
    return totals === undefined ? [] : [[kind, apiTotals(totals)] as const];
  });
  return {
    ...asked,
    currency: report.realised.saving.currency,
    rows: report.rows.map(apiRow),
    totals: {
      realised: apiTotals(report.realised),
      unrealised: apiTotals(report.unrealised),
      byKind: Object.fromEntries(kinds),
    },
    breakdown: savingBreakdown(report.rows, report.realised.saving.currency).map((line) => ({
      cause: line.cause,
      realised: totalDigits(line.realised),
      unrealised: totalDigits(line.unrealised),
      amount: totalDigits(line.amount),
      rows: line.rows,
    })),
  };
}
