import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { GYPSUM_WEIGHT, MEMORY, OSB_716_WEIGHT, OSB_WEIGHT, PLYWOOD_WEIGHT, PRACTICE } from "./sources.ts";

const FOUR_BY_EIGHT: WrittenSizes = { faceWidth: "48 in", faceLength: "96 in" };
const METRIC: WrittenSizes = { faceWidth: "1220 mm", faceLength: "2440 mm" };

type Row = readonly [
  key: string,
  name: string,
  sizes: WrittenSizes,
  weightSource?: string,
  words?: string,
  grade?: string,
];

/** The thickness category is a panel's identity: 7/16, 15/32 and 1/2 are three materials, and 12.5 mm is a fourth. */
const ROWS: readonly Row[] = [
  [
    "ply-1-4",
    "Softwood plywood 1/4 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "1/4 in", weight: "24 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-3-8",
    "Softwood plywood 3/8 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "3/8 in", weight: "36 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-15-32",
    "Softwood plywood 15/32 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "15/32 in", weight: "45 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-1-2",
    "Softwood plywood 1/2 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "1/2 in", weight: "48 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-19-32",
    "Softwood plywood 19/32 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "19/32 in", weight: "57 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-5-8",
    "Softwood plywood 5/8 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "5/8 in", weight: "60 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-23-32",
    "Softwood plywood 23/32 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "23/32 in", weight: "69 lb" },
    PLYWOOD_WEIGHT,
  ],
  [
    "ply-23-32-tg",
    "Softwood plywood 23/32 in, tongue and groove, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "23/32 in", weight: "69 lb" },
    PLYWOOD_WEIGHT,
    "T&G subfloor",
  ],
  [
    "ply-3-4",
    "Softwood plywood 3/4 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "3/4 in", weight: "72 lb" },
    PLYWOOD_WEIGHT,
  ],
  ["ply-9-5-mm", "Softwood plywood 9.5 mm, 1220 x 2440 mm", { ...METRIC, nominalThickness: "9.5 mm" }],
  ["ply-12-5-mm", "Softwood plywood 12.5 mm, 1220 x 2440 mm", { ...METRIC, nominalThickness: "12.5 mm" }],
  ["ply-15-5-mm", "Softwood plywood 15.5 mm, 1220 x 2440 mm", { ...METRIC, nominalThickness: "15.5 mm" }],
  ["ply-18-5-mm", "Softwood plywood 18.5 mm, 1220 x 2440 mm", { ...METRIC, nominalThickness: "18.5 mm" }],
  [
    "osb-7-16",
    "Oriented strand board 7/16 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "7/16 in", weight: "44.8 lb" },
    OSB_716_WEIGHT,
    "OSB sheathing",
  ],
  [
    "osb-15-32",
    "Oriented strand board 15/32 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "15/32 in" },
    undefined,
    "OSB sheathing",
  ],
  [
    "osb-1-2",
    "Oriented strand board 1/2 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "1/2 in", weight: "53.44 lb" },
    OSB_WEIGHT,
    "OSB sheathing",
  ],
  [
    "osb-5-8",
    "Oriented strand board 5/8 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "5/8 in", weight: "66.56 lb" },
    OSB_WEIGHT,
    "OSB sheathing",
  ],
  [
    "osb-23-32-tg",
    "Oriented strand board 23/32 in, tongue and groove, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "23/32 in" },
    undefined,
    "OSB T&G subfloor",
  ],
  [
    "osb-3-4",
    "Oriented strand board 3/4 in, 4x8",
    { ...FOUR_BY_EIGHT, nominalThickness: "3/4 in", weight: "80 lb" },
    OSB_WEIGHT,
    "OSB",
  ],
  [
    "osb-11-mm",
    "Oriented strand board 11 mm, 1220 x 2440 mm",
    { ...METRIC, nominalThickness: "11 mm" },
    undefined,
    "OSB sheathing",
  ],
  [
    "gypsum-1-2-4x8",
    "Gypsum board 1/2 in, 4x8",
    { ...FOUR_BY_EIGHT, thickness: "1/2 in", weight: "51.2 lb" },
    GYPSUM_WEIGHT,
    "drywall plasterboard",
  ],
  [
    "gypsum-1-2-4x10",
    "Gypsum board 1/2 in, 4x10",
    { faceWidth: "48 in", faceLength: "120 in", thickness: "1/2 in", weight: "64 lb" },
    GYPSUM_WEIGHT,
    "drywall plasterboard",
  ],
  [
    "gypsum-1-2-4x12",
    "Gypsum board 1/2 in, 4x12",
    { faceWidth: "48 in", faceLength: "144 in", thickness: "1/2 in", weight: "76.8 lb" },
    GYPSUM_WEIGHT,
    "drywall plasterboard",
  ],
  [
    "gypsum-1-2-wet",
    "Gypsum board 1/2 in, moisture resistant, 4x8",
    { ...FOUR_BY_EIGHT, thickness: "1/2 in" },
    undefined,
    "drywall bathroom",
    "Moisture resistant",
  ],
  [
    "gypsum-5-8",
    "Gypsum board 5/8 in, 4x8",
    { ...FOUR_BY_EIGHT, thickness: "5/8 in", weight: "70.4 lb" },
    GYPSUM_WEIGHT,
    "drywall plasterboard",
  ],
  [
    "gypsum-5-8-x",
    "Gypsum board 5/8 in, Type X, 4x8",
    { ...FOUR_BY_EIGHT, thickness: "5/8 in" },
    undefined,
    "drywall fire rated",
    "Type X",
  ],
  [
    "cement-1-2",
    "Cement board 1/2 in, 3x5",
    { faceWidth: "36 in", faceLength: "60 in", thickness: "1/2 in" },
    undefined,
    "tile backer",
  ],
  [
    "mdf-3-4",
    "Fibreboard, medium density, 3/4 in, 49x97",
    { faceWidth: "49 in", faceLength: "97 in", thickness: "3/4 in" },
    undefined,
    "MDF",
  ],
  ["hardboard-1-8", "Hardboard 1/8 in, 4x8", { ...FOUR_BY_EIGHT, thickness: "1/8 in" }],
];

/** Metric categories and an oversize face are from memory; a thickness that is only the name it is sold by is practice. */
function sources(sizes: WrittenSizes, weightSource?: string) {
  return {
    ...(sizes.weight === undefined ? {} : { weight: weightSource ?? MEMORY }),
    ...(sizes.nominalThickness?.endsWith("mm") ? { nominalThickness: MEMORY } : {}),
    ...(sizes.thickness === undefined ? {} : { thickness: PRACTICE }),
    ...(sizes.faceWidth === "49 in" ? { faceWidth: MEMORY, faceLength: MEMORY } : {}),
  };
}

export const SHEET_GOODS: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, sizes, weightSource, words, grade]) => ({
    key,
    name,
    words,
    category: "sheet-goods",
    purchaseUnit: "sheet",
    sizes,
    identity: grade === undefined ? {} : { grade },
    sources: sources(sizes, weightSource),
  }),
);
