import { DOOR_KINDS, HANDS, type Identity, TREATMENTS } from "../materials/identity.ts";
import type { Category } from "../materials/material.ts";

export const IDENTITY_NAMES = ["doorKind", "hand", "grade", "treatment"] as const;
export type IdentityName = (typeof IDENTITY_NAMES)[number];

/** What can be chosen of each; grades are written, as they are stamped. */
export const IDENTITY_CHOICES = { doorKind: DOOR_KINDS, hand: HANDS, treatment: TREATMENTS } as const;

/** What makes a material of a category another material. Common practice. */
const ASKED: Readonly<Record<Category, readonly IdentityName[]>> = {
  "sheet-goods": ["grade", "treatment"],
  "dimensional-lumber": ["grade", "treatment"],
  doors: ["doorKind", "hand"],
  windows: ["hand"],
  roofing: [],
  siding: ["treatment"],
  insulation: [],
  masonry: [],
  fasteners: ["treatment"],
  other: [],
};

/** What a form asks of a material beside its sizes: what its category is told apart by, and whatever is known already. */
export function identityFields(category: Category, identity: Identity): IdentityName[] {
  return IDENTITY_NAMES.filter((name) => ASKED[category].includes(name) || identity[name] !== undefined);
}
