import type { PurchaseUnit } from "../../measure/units.ts";
import type { Treatment } from "../identity.ts";
import type { Sources } from "../material.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { AS_SOLD, NAIL_COUNT, PRACTICE } from "./sources.ts";

type Row = readonly [
  key: string,
  name: string,
  unit: PurchaseUnit,
  sizes: WrittenSizes,
  sources: Sources,
  words?: string,
  treatment?: Treatment,
];

const BY_WEIGHT: Sources = { pieces: NAIL_COUNT, weight: AS_SOLD };
const EACH: Sources = { weight: NAIL_COUNT };

/** Nails count by their weight: where the tables give a range, the fewer to the pound, so that a box is not short. */
const ROWS: readonly Row[] = [
  [
    "nail-16d-50",
    "Common nail 16d, 50 lb box",
    "box",
    { pieces: "2500 pieces", weight: "50 lb" },
    BY_WEIGHT,
    "3-1/2 in framing",
  ],
  [
    "nail-16d-5",
    "Common nail 16d, 5 lb box",
    "box",
    { pieces: "250 pieces", weight: "5 lb" },
    BY_WEIGHT,
    "3-1/2 in framing",
  ],
  [
    "nail-10d-5",
    "Common nail 10d, 5 lb box",
    "box",
    { pieces: "325 pieces", weight: "5 lb" },
    BY_WEIGHT,
    "3 in framing",
  ],
  [
    "nail-8d-5",
    "Common nail 8d, 5 lb box",
    "box",
    { pieces: "500 pieces", weight: "5 lb" },
    BY_WEIGHT,
    "2-1/2 in sheathing",
  ],
  [
    "nail-6d-5",
    "Common nail 6d, 5 lb box",
    "box",
    { pieces: "850 pieces", weight: "5 lb" },
    BY_WEIGHT,
    "2 in",
  ],
  ["nail-16d-pound", "Common nail 16d, loose", "pound", { weight: "0.02 lb" }, EACH, "3-1/2 in framing"],
  [
    "nail-16d-galvanized",
    "Common nail 16d, hot-dip galvanized, 5 lb box",
    "box",
    { weight: "5 lb" },
    { weight: AS_SOLD },
    "3-1/2 in treated deck",
    "hot-dip-galvanized",
  ],
  [
    "roofing-nail",
    "Roofing nail 1-1/4 in, hot-dip galvanized, 30 lb box",
    "box",
    { weight: "30 lb" },
    { weight: AS_SOLD },
    "shingle",
    "hot-dip-galvanized",
  ],
  [
    "gun-nail",
    "Strip nail 3-1/4 in, box of 2,500",
    "box",
    { pieces: "2500 pieces", length: "3-1/4 in" },
    { pieces: PRACTICE, length: AS_SOLD },
    "framing nailer collated",
  ],
  [
    "drywall-screw",
    "Drywall screw 1-1/4 in, box of 1,000",
    "box",
    { pieces: "1000 pieces", length: "1-1/4 in" },
    { pieces: PRACTICE, length: AS_SOLD },
    "gypsum",
  ],
  [
    "deck-screw",
    "Deck screw 3 in, stainless, 5 lb box",
    "box",
    { weight: "5 lb", length: "3 in" },
    { weight: AS_SOLD, length: AS_SOLD },
    "treated",
    "stainless",
  ],
  [
    "joist-hanger",
    "Joist hanger for 2x8, hot-dip galvanized",
    "each",
    {},
    {},
    "connector bracket",
    "hot-dip-galvanized",
  ],
];

export const FASTENERS: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, purchaseUnit, sizes, sources, words, treatment]) => ({
    key,
    name,
    words,
    category: "fasteners",
    purchaseUnit,
    sizes,
    sources,
    identity: treatment === undefined ? {} : { treatment },
  }),
);
