import type { PurchaseUnit } from "../../measure/units.ts";
import type { Sources } from "../material.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { BUNDLES, CAP_RUN, FELT, MEMORY, PANEL_COVER, SHINGLE_SIZE, SHINGLE_WEIGHT } from "./sources.ts";

type Row = readonly [
  key: string,
  name: string,
  unit: PurchaseUnit,
  sizes: WrittenSizes,
  sources: Sources,
  words?: string,
];

/**
 * Bundles per square are the bundle's coverage: a third, a quarter or a fifth of 100 square feet. A third is put down a
 * millionth of a foot too large, so that 40 squares are 120 bundles and not 121.
 */
const ROWS: readonly Row[] = [
  [
    "shingle-3",
    "Asphalt shingle, laminated, three bundles a square",
    "bundle",
    { coverage: "33.333334 sq ft", weight: "80 lb" },
    { coverage: BUNDLES, weight: SHINGLE_WEIGHT },
    "architectural",
  ],
  [
    "shingle-4",
    "Asphalt shingle, heavy, four bundles a square",
    "bundle",
    { coverage: "25 sq ft" },
    { coverage: BUNDLES },
    "laminated",
  ],
  [
    "shingle-5",
    "Asphalt shingle, heavy, five bundles a square",
    "bundle",
    { coverage: "20 sq ft" },
    { coverage: BUNDLES },
    "laminated",
  ],
  [
    "shingle-strip",
    "Asphalt shingle, strip 36 in, 5 in exposed",
    "bundle",
    { coverage: "33.333334 sq ft", faceWidth: "36 in", coverageWidth: "5 in" },
    { coverage: BUNDLES, faceWidth: SHINGLE_SIZE, coverageWidth: SHINGLE_SIZE },
    "three-tab",
  ],
  [
    "shingle-metric",
    "Asphalt shingle, strip 39-3/8 in, 5-5/8 in exposed",
    "bundle",
    { pieces: "21 pieces", faceLength: "39-3/8 in", coverageWidth: "5-5/8 in" },
    { pieces: MEMORY, faceLength: SHINGLE_SIZE, coverageWidth: SHINGLE_SIZE },
    "three-tab metric",
  ],
  [
    "starter",
    "Starter strip, bundle of 100 ft",
    "bundle",
    { coverageLength: "100 ft" },
    { coverageLength: MEMORY },
    "eave shingle",
  ],
  [
    "ridge-cap",
    "Ridge and hip cap, bundle of 20 ft",
    "bundle",
    { coverageLength: "20 ft" },
    { coverageLength: CAP_RUN },
    "shingle",
  ],
  [
    "felt-15",
    "Roofing felt, light, 36 in x 144 ft",
    "roll",
    { coverage: "400 sq ft", faceWidth: "36 in", length: "144 ft" },
    { coverage: FELT, faceWidth: FELT, length: FELT },
    "underlayment building paper",
  ],
  [
    "felt-30",
    "Roofing felt, heavy, 36 in x 72 ft",
    "roll",
    { coverage: "200 sq ft", faceWidth: "36 in", length: "72 ft" },
    { coverage: MEMORY, faceWidth: MEMORY, length: MEMORY },
    "underlayment building paper",
  ],
  [
    "underlayment",
    "Synthetic underlayment, roll of 10 squares",
    "roll",
    { coverage: "10 squares" },
    { coverage: MEMORY },
  ],
  [
    "eave-membrane",
    "Eave protection membrane, roll of 2 squares",
    "roll",
    { coverage: "2 squares" },
    { coverage: MEMORY },
    "ice and water barrier",
  ],
  [
    "roll-roofing",
    "Roll roofing, one square",
    "roll",
    { coverage: "1 square" },
    { coverage: MEMORY },
    "mineral surfaced",
  ],
  [
    "metal-36-10",
    "Metal roofing panel, covers 36 in, 10 ft",
    "piece",
    { width: "38 in", coverageWidth: "36 in", length: "10 ft" },
    { width: PANEL_COVER, coverageWidth: PANEL_COVER },
    "steel ribbed",
  ],
  [
    "metal-36-12",
    "Metal roofing panel, covers 36 in, 12 ft",
    "piece",
    { width: "38 in", coverageWidth: "36 in", length: "12 ft" },
    { width: PANEL_COVER, coverageWidth: PANEL_COVER },
    "steel ribbed",
  ],
  [
    "metal-21-5-12",
    "Corrugated metal panel 26-1/2 in, covers 21-1/2 in, 12 ft",
    "piece",
    { width: "26-1/2 in", coverageWidth: "21-1/2 in", length: "12 ft" },
    { width: PANEL_COVER, coverageWidth: PANEL_COVER },
    "steel",
  ],
  ["drip-edge", "Drip edge, 10 ft", "piece", { length: "10 ft" }, {}, "eave flashing"],
  ["valley", "Valley flashing, 10 ft", "piece", { length: "10 ft" }, {}],
  ["ridge-vent", "Ridge vent, 4 ft", "piece", { length: "4 ft" }, {}],
  ["flashing-roll", "Flashing, roll of 14 in x 10 ft", "roll", { faceWidth: "14 in", length: "10 ft" }, {}],
];

export const ROOFING: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, purchaseUnit, sizes, sources, words]) => ({
    key,
    name,
    words,
    category: "roofing",
    purchaseUnit,
    sizes,
    sources,
  }),
);
