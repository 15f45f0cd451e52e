import type * as z from "zod";
import {
  amountOrZero,
  currency,
  day,
  fields,
  id,
  listOf,
  name,
  note,
  quantity,
  quantityOrZero,
  type Rule,
  share,
  withRules,
} from "../entry-fields.ts";

const row = fields({
  pieces: quantity().refine((value) => value.isInteger(), { error: "not-whole" }),
  length: name().nullable().default(null),
});

const said = (value: unknown): boolean => value !== null && value !== undefined;
const counted = ({ tally }: Readonly<Record<string, unknown>>): boolean =>
  Array.isArray(tally) && tally.length > 0;

const RULES: readonly Rule[] = [
  {
    path: "reclaimedFrom",
    code: "missing",
    broken: (given) => !said(given.reclaimedFrom) && !said(given.projectId),
  },
  { path: "quantity", code: "missing", broken: (given) => !said(given.quantity) && !counted(given) },
  { path: "quantity", code: "said-twice", broken: (given) => said(given.quantity) && counted(given) },
];

const corrected = {
  reclaimedFrom: name().nullable().default(null),
  projectId: id().nullable().default(null),
  hours: quantityOrZero().prefault("0"),
  hourlyRate: amountOrZero().prefault("0"),
  hauling: amountOrZero().prefault("0"),
  purchasePrice: amountOrZero().prefault("0"),
  currency: currency(),
  condition: share(),
  tally: listOf(row, 200).default([]),
  quantity: quantity().nullable().default(null),
  on: day(),
  note: note().nullable().default(null),
};

/**
 * Salvage counted in: where from (in words, a project, or both), hours x hourly rate, hauling, what was paid for it, its
 * condition as a share of a new one, and either a tally or a quantity in purchase units. on: the day it was got.
 * Faults: missing (reclaimedFrom: neither words nor a project; quantity: neither a tally nor a quantity), said-twice
 * (quantity beside a tally), not-whole (pieces).
 */
export const salvageEntry = withRules(
  fields({
    materialId: id(),
    ...corrected,
    placeId: id().nullable().default(null),
    storedAt: name().nullable().default(null),
  }),
  RULES,
);
export type SalvageEntry = z.output<typeof salvageEntry>;

/** Salvage counted in, corrected: all of it anew but its material (another material is another lot) and where it lies. */
export const salvageCorrection = withRules(fields(corrected), RULES);
export type SalvageCorrection = z.output<typeof salvageCorrection>;
