import { DIMENSIONAL_LUMBER } from "./dimensional-lumber.ts";
import { DOORS } from "./doors.ts";
import type { CatalogueEntry } from "./entry.ts";
import { FASTENERS } from "./fasteners.ts";
import { INSULATION } from "./insulation.ts";
import { MASONRY } from "./masonry.ts";
import { OTHER } from "./other.ts";
import { ROOFING } from "./roofing.ts";
import { SHEET_GOODS } from "./sheet-goods.ts";
import { SIDING } from "./siding.ts";
import { WINDOWS } from "./windows.ts";

/** Ready-made materials across the categories, to start from: kinds and sizes of the trade, no brand and no price. */
export const CATALOGUE: readonly CatalogueEntry[] = [
  ...SHEET_GOODS,
  ...DIMENSIONAL_LUMBER,
  ...DOORS,
  ...WINDOWS,
  ...ROOFING,
  ...SIDING,
  ...INSULATION,
  ...MASONRY,
  ...FASTENERS,
  ...OTHER,
];

/** The catalogue's entry of a key, or null when it has none (an old link). */
export function catalogued(key: string): CatalogueEntry | null {
  return CATALOGUE.find((entry) => entry.key === key) ?? null;
}
