import type * as z from "zod";
import {
  amount,
  amountOrZero,
  choice,
  currency,
  day,
  fields,
  flag,
  id,
  note,
  quantity,
  type Rule,
  withRules,
} from "../entry-fields.ts";
import { regionCode } from "../tax/tax-region-entry.ts";
import { DISPOSAL_FEE_BASES, WASTE_KINDS, WEIGHT_UNITS } from "./disposal.ts";

const said = (value: unknown): boolean => value !== null && value !== undefined;

const RULES: readonly Rule[] = [
  { path: "loads", code: "missing", broken: ({ feeBasis, loads }) => feeBasis === "load" && !said(loads) },
  { path: "loads", code: "not-asked", broken: ({ feeBasis, loads }) => feeBasis !== "load" && said(loads) },
  { path: "least", code: "not-asked", broken: ({ feeBasis, least }) => feeBasis !== "tonne" && said(least) },
  {
    path: "materialId",
    code: "missing",
    broken: ({ materialId, quantity: many }) => said(many) && !said(materialId),
  },
  {
    path: "quantity",
    code: "missing",
    broken: ({ materialId, quantity: many }) => said(materialId) && !said(many),
  },
];

/**
 * Waste gotten rid of, and what it cost. fee: per tonne, per load (with loads), or flat; least: the least charged, of a fee per
 * tonne. weight: as weighed; a material with a quantity in its purchase units says it where nothing was weighed. A fee per tonne may be entered before
 * the weight is known: then its cost is not known. Faults: missing and not-asked (loads, least), missing (materialId, quantity).
 */
export const disposalEntry = withRules(
  fields({
    kind: choice(WASTE_KINDS),
    on: day(),
    feeBasis: choice(DISPOSAL_FEE_BASES),
    fee: amountOrZero(),
    least: amount().nullable().default(null),
    loads: quantity().nullable().default(null),
    hauling: amountOrZero().prefault("0"),
    currency: currency(),
    taxIncluded: flag().default(false),
    taxRegion: regionCode().nullable().default(null),
    weight: fields({ value: quantity(), unit: choice(WEIGHT_UNITS) })
      .nullable()
      .default(null),
    materialId: id().nullable().default(null),
    quantity: quantity().nullable().default(null),
    note: note().nullable().default(null),
  }),
  RULES,
);
export type DisposalEntry = z.output<typeof disposalEntry>;
