import type { Material } from "../../lib/materials/material.ts";
import type { LotText } from "../../lib/show/lot-text.ts";

/** Which cautions belong to some lots: reclaimed lumber is not graded, stored panels warp and burn (product.md). */
export function cautionsOf(
  lots: readonly Pick<LotText, "origin" | "materialId">[],
  materials: ReadonlyMap<string, Material>,
): ("cautionSalvage" | "cautionPanels")[] {
  const salvaged = lots.some((lot) => lot.origin === "salvaged");
  const panels = lots.some((lot) => materials.get(lot.materialId)?.category === "sheet-goods");
  return [
    ...(salvaged ? (["cautionSalvage"] as const) : []),
    ...(panels ? (["cautionPanels"] as const) : []),
  ];
}
