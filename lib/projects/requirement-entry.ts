import type * as z from "zod";
import {
  amount,
  day,
  fields,
  flag,
  id,
  inOrder,
  listOf,
  percent,
  purchaseUnit,
  quantity,
  withRules,
} from "../entry-fields.ts";

const alternative = fields({ materialId: id(), factor: quantity() });

const shape = {
  quantity: quantity(),
  unit: purchaseUnit(),
  wastePercent: percent(),
  neededBy: day(),
  budgetUnitPrice: amount().nullable(),
  acceptsUsed: flag(),
  alternatives: listOf(alternative, 20),
  validFrom: day().nullable(),
};

/** A new requirement. budgetUnitPrice: home currency, all in, per purchase unit. validFrom null: from the day it is entered. */
export const requirementEntry = fields({
  materialId: id(),
  ...shape,
  wastePercent: percent().prefault("0"),
  budgetUnitPrice: shape.budgetUnitPrice.default(null),
  acceptsUsed: shape.acceptsUsed.default(false),
  alternatives: shape.alternatives.default([]),
  validFrom: shape.validFrom.default(null),
});
export type RequirementEntry = z.output<typeof requirementEntry>;

/** A dated revision of a requirement; closedOn: nothing is open from that day on, null opens it again. */
export const requirementPatch = withRules(fields({ ...shape, closedOn: day().nullable() }).partial(), [
  inOrder("validFrom", "closedOn"),
]);
export type RequirementPatch = z.output<typeof requirementPatch>;
