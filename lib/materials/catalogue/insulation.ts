import type { PurchaseUnit } from "../../measure/units.ts";
import type { Sources } from "../material.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { AS_SOLD, MEMORY, TUBE_LIFE } from "./sources.ts";

type Row = readonly [
  key: string,
  name: string,
  unit: PurchaseUnit,
  sizes: WrittenSizes,
  sources: Sources,
  words?: string,
  shelfLifeDays?: number,
];

/** What a bag covers differs by maker: where none was read it is left blank, for the bag to say. */
const ROWS: readonly Row[] = [
  [
    "batt-r13-15",
    "Batt R-13, 15 x 93 in, bag of 11",
    "bag",
    { faceWidth: "15 in", faceLength: "93 in", pieces: "11 pieces", thickness: "3-1/2 in" },
    { pieces: MEMORY, thickness: MEMORY },
    "glass fibre wall",
  ],
  [
    "batt-r22-15",
    "Mineral batt R-22, 15 in",
    "bag",
    { faceWidth: "15 in", thickness: "5-1/2 in" },
    { thickness: MEMORY },
    "stone wool wall",
  ],
  [
    "batt-r22-23",
    "Mineral batt R-22, 23 in",
    "bag",
    { faceWidth: "23 in", thickness: "5-1/2 in" },
    { thickness: MEMORY },
    "stone wool wall",
  ],
  [
    "foam-1-4x8",
    "Foam board 1 in, 4x8",
    "sheet",
    { faceWidth: "48 in", faceLength: "96 in", thickness: "1 in" },
    { thickness: AS_SOLD },
    "rigid insulation EPS XPS",
  ],
  [
    "foam-2-2x8",
    "Foam board 2 in, 2x8",
    "sheet",
    { faceWidth: "24 in", faceLength: "96 in", thickness: "2 in" },
    { thickness: AS_SOLD },
    "rigid insulation XPS",
  ],
  [
    "foam-2-4x8",
    "Foam board 2 in, 4x8",
    "sheet",
    { faceWidth: "48 in", faceLength: "96 in", thickness: "2 in" },
    { thickness: AS_SOLD },
    "rigid insulation EPS",
  ],
  ["loose-fill", "Loose-fill cellulose, bag", "bag", {}, {}, "blown attic"],
  [
    "vapour-6-500",
    "Vapour barrier 6 mil, roll of 500 sq ft",
    "roll",
    { coverage: "500 sq ft" },
    { coverage: AS_SOLD },
    "poly polyethylene",
  ],
  [
    "sill-gasket",
    "Sill gasket 5-1/2 in, roll of 50 ft",
    "roll",
    { width: "5-1/2 in", length: "50 ft" },
    { width: AS_SOLD },
    "foam",
  ],
  ["spray-foam", "Gap-filling foam, can", "each", {}, { shelfLifeDays: TUBE_LIFE }, "sealant", 270],
];

export const INSULATION: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, purchaseUnit, sizes, sources, words, shelfLifeDays]) => ({
    key,
    name,
    words,
    category: "insulation",
    purchaseUnit,
    sizes,
    sources,
    shelfLifeDays,
  }),
);
