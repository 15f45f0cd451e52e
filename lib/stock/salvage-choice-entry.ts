import type * as z from "zod";
import {
  amount,
  amountOrZero,
  choice,
  fields,
  id,
  quantity,
  quantityOrZero,
  share,
  withRules,
} from "../entry-fields.ts";
import { DISPOSAL_FEE_BASES } from "../projects/disposal.ts";

const said = (value: unknown): boolean => value !== null && value !== undefined;

/**
 * What is asked when keeping, selling and dumping are compared; all money in home currency. fee null, storage null: not known;
 * asking null: nobody would ask for money; weight: kilograms. Fault: missing (loads, of a fee per load).
 */
export const salvageChoiceEntry = withRules(
  fields({
    materialId: id(),
    quantity: quantity(),
    condition: share(),
    hours: quantityOrZero().prefault("0"),
    hourlyRate: amountOrZero().prefault("0"),
    hauling: amountOrZero().prefault("0"),
    storage: amountOrZero().nullable().default(null),
    feeBasis: choice(DISPOSAL_FEE_BASES),
    fee: amountOrZero().nullable().default(null),
    least: amount().nullable().default(null),
    loads: quantity().nullable().default(null),
    weight: quantity().nullable().default(null),
    haulingAway: amountOrZero().prefault("0"),
    asking: amountOrZero().nullable().default(null),
  }),
  [
    {
      path: "loads",
      code: "missing",
      broken: ({ feeBasis, loads, fee }) => feeBasis === "load" && said(fee) && !said(loads),
    },
  ],
);
export type SalvageChoiceEntry = z.output<typeof salvageChoiceEntry>;
