import type { Category } from "../materials/material.ts";
import type { LineName } from "./result.ts";

const SHEETS: readonly Category[] = ["sheet-goods"];
const LUMBER: readonly Category[] = ["dimensional-lumber"];
const ROOFING: readonly Category[] = ["roofing"];
const MASONRY: readonly Category[] = ["masonry"];

/** What a line is usually bought as, by category; null: anything. Common practice. */
const USUAL: Readonly<Record<LineName, readonly Category[] | null>> = {
  surface: null,
  roofSheathing: SHEETS,
  underlayment: ROOFING,
  shingles: ROOFING,
  metalPanels: ROOFING,
  starter: ROOFING,
  ridgeCap: ROOFING,
  valleyLining: ROOFING,
  edgeTrim: ROOFING,
  iceBarrier: ROOFING,
  rafters: LUMBER,
  hipRafters: LUMBER,
  valleyRafters: LUMBER,
  ridgeBoard: LUMBER,
  wallSheathing: SHEETS,
  houseWrap: ["siding", "insulation"],
  drywall: SHEETS,
  studs: LUMBER,
  plates: LUMBER,
  joists: LUMBER,
  rims: LUMBER,
  subfloor: SHEETS,
  deckBoards: LUMBER,
  boards: ["siding", "dimensional-lumber"],
  pavers: MASONRY,
  gravel: MASONRY,
  beddingSand: MASONRY,
  edging: ["masonry", "dimensional-lumber"],
  concrete: MASONRY,
  counted: null,
};

/** Whether a line is usually bought as a material of a category; "other" may be anything. Source: common practice. */
export function isUsualFor(line: LineName, category: Category): boolean {
  const usual = USUAL[line];
  return usual === null || category === "other" || usual.includes(category);
}
