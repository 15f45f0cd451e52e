import type { Requirement } from "../projects/project.ts";
import type { LotMoreText } from "./lot-more.ts";
import type { LotOnDay } from "./lot-text.ts";

/** What a list of lots is narrowed to; null: everything. place NOWHERE: what is not put away. */
export type StockFilter = Readonly<{
  placeId: string | null;
  projectId: string | null;
  materialId: string | null;
}>;

/** Asks for what lies in no place. */
export const NOWHERE = "none";

/** Lots some of which lie in a place, are set aside for a project, are of a material. Of what is on order nothing lies anywhere yet. */
export function filteredLots(
  lots: readonly LotOnDay[],
  more: ReadonlyMap<string, LotMoreText>,
  requirements: readonly Requirement[],
  { placeId, projectId, materialId }: StockFilter,
): LotOnDay[] {
  const own = new Set(requirements.filter((need) => need.projectId === projectId).map(({ id }) => id));
  const wanted = placeId === NOWHERE ? null : placeId;
  return lots.filter(({ lot, account }) => {
    if (materialId !== null && lot.materialId !== materialId) return false;
    if (placeId !== null && !more.get(lot.id)?.lying.some((one) => one.placeId === wanted)) return false;
    return (
      projectId === null ||
      account.holdings.some(({ requirementId }) => requirementId !== null && own.has(requirementId))
    );
  });
}
