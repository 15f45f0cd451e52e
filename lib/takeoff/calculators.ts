import { area } from "./area.ts";
import { boards } from "./boards.ts";
import { type Reckoner, reckonerOf } from "./calculator.ts";
import { counts } from "./counts.ts";
import { deck } from "./deck.ts";
import { floor } from "./floor.ts";
import { footing } from "./footing.ts";
import { gableRoof } from "./gable-roof.ts";
import { hipRoof } from "./hip-roof.ts";
import { lShapedHipRoof } from "./l-shaped-hip-roof.ts";
import { metalPanels } from "./metal-panels.ts";
import { pavers } from "./pavers.ts";
import { roofing } from "./roofing.ts";
import { shedRoof } from "./shed-roof.ts";
import { slab } from "./slab.ts";
import { tube } from "./tube.ts";
import { walls } from "./walls.ts";

export const CALCULATOR_NAMES = [
  "area",
  "gable-roof",
  "shed-roof",
  "hip-roof",
  "l-shaped-hip-roof",
  "roofing",
  "metal-panels",
  "walls",
  "boards",
  "floor",
  "deck",
  "pavers",
  "slab",
  "footing",
  "tube",
  "counts",
] as const;
export type CalculatorName = (typeof CALCULATOR_NAMES)[number];

/** Every calculator by its name. */
export const CALCULATORS: Readonly<Record<CalculatorName, Reckoner>> = {
  area: reckonerOf(area),
  "gable-roof": reckonerOf(gableRoof),
  "shed-roof": reckonerOf(shedRoof),
  "hip-roof": reckonerOf(hipRoof),
  "l-shaped-hip-roof": reckonerOf(lShapedHipRoof),
  roofing: reckonerOf(roofing),
  "metal-panels": reckonerOf(metalPanels),
  walls: reckonerOf(walls),
  boards: reckonerOf(boards),
  floor: reckonerOf(floor),
  deck: reckonerOf(deck),
  pavers: reckonerOf(pavers),
  slab: reckonerOf(slab),
  footing: reckonerOf(footing),
  tube: reckonerOf(tube),
  counts: reckonerOf(counts),
};
