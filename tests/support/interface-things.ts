import { materialShape } from "../../lib/show/api-material.ts";
import { projectShape, requirementShape } from "../../lib/show/api-project.ts";
import { storeShape } from "../../lib/show/api-store.ts";
import type { Interface } from "./interface.ts";

let made = 0;
/** A name nothing else has: names are unique in a workspace. */
export function another(name: string): string {
  made += 1;
  return `${name} ${made}`;
}

/** A store in Nova Scotia that quotes before tax. */
export function someStore(api: Interface, more: object = {}) {
  const body = { name: another("Mill Road Yard"), taxRegion: "CA-NS", currency: "CAD", ...more };
  return api.make(storeShape, "/stores", body);
}

/** Half-inch plywood by the sheet of 4 by 8 feet. */
export function somePlywood(api: Interface, more: object = {}) {
  return api.make(materialShape, "/materials", {
    name: another("Spruce plywood 1/2 in, 4x8"),
    category: "sheet goods",
    purchaseUnit: "sheet",
    dimensions: { faceWidth: "48 in", faceLength: "96 in" },
    ...more,
  });
}

/** A shelf price of one sheet before tax. */
export function priceSeen(
  materialId: string,
  storeId: string,
  seenOn: string,
  amount: string,
  more: object = {},
) {
  const per = { quantity: "1", unit: "sheet" };
  return {
    materialId,
    storeId,
    seenOn,
    amount,
    currency: "CAD",
    per,
    taxIncluded: false,
    terms: "shelf",
    ...more,
  };
}

/** A live project with one requirement of a material, both known since the first of June 2025. */
export async function someNeed(api: Interface, materialId: string, quantity: string, more: object = {}) {
  const project = await api.make(projectShape, "/projects", {
    name: another("Heron Lane workshop"),
    status: "live",
    statusFrom: "2025-06-01",
    budget: "2000",
  });
  const requirement = await api.make(requirementShape, `/projects/${project.id}/requirements`, {
    materialId,
    quantity,
    unit: "sheet",
    neededBy: "2025-07-15",
    validFrom: "2025-06-01",
    ...more,
  });
  return { project, requirement };
}

/** So many sheets bought on a day for an amount before tax. */
export function bought(
  materialId: string,
  quantity: string,
  amount: string,
  orderedOn: string,
  more: object = {},
) {
  const paid = { amount, currency: "CAD", taxIncluded: false, taxRegion: "CA-NS" };
  return { materialId, origin: "bought", quantity, paid, orderedOn, ...more };
}
