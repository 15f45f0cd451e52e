import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ONE } from "../decimal.ts";
import { type ConversionRefusal, convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Requirement } from "./project.ts";
import { revisionOn } from "./revisions.ts";

/** How much is required, in the material's purchase units, or why that cannot be said. "not-yet": before the first revision. */
export type Required =
  | Readonly<{ known: true; quantity: Decimal; unit: PurchaseUnit }>
  | Readonly<{ known: false; reason: ConversionRefusal | "not-yet" }>;

/**
 * What a requirement needs on a day, waste included, before anything locked in is taken off.
 *     required = quantity x (1 + waste / 100), read in the material's purchase unit
 * Units: the material's purchase unit. Rounds: never (not to packs, not to whole units); a unit conversion that does not
 * end is cut at 40 digits. Source: rules.md R8.
 */
export function requiredOn(requirement: Requirement, day: LocalDate, material: Material): Required {
  const revision = revisionOn(requirement, day);
  if (revision === null) return { known: false, reason: "not-yet" };
  const unit = material.purchaseUnit;
  const value = revision.quantity.times(ONE.plus(revision.wastePercent.dividedBy(HUNDRED)));
  if (revision.unit === unit) return { known: true, quantity: value, unit };
  const converted = convertFor(material, { value, unit: revision.unit }, unit);
  return converted.ok
    ? { known: true, quantity: converted.value, unit }
    : { known: false, reason: converted.reason };
}
