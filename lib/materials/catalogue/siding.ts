import type { PurchaseUnit } from "../../measure/units.ts";
import type { Sources } from "../material.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { MEMORY, PRACTICE, SIDING_SQUARE } from "./sources.ts";

type Row = readonly [
  key: string,
  name: string,
  unit: PurchaseUnit,
  sizes: WrittenSizes,
  sources: Sources,
  words?: string,
];

/** Lapped siding covers by what stays exposed. */
const ROWS: readonly Row[] = [
  [
    "siding-carton",
    "Vinyl siding, carton of 2 squares",
    "box",
    { coverage: "2 squares" },
    { coverage: SIDING_SQUARE },
    "cladding",
  ],
  [
    "clapboard-6",
    "Wood clapboard 6 in, 4 in exposed",
    "linear-foot",
    { width: "5-1/2 in", coverageWidth: "4 in" },
    { width: PRACTICE, coverageWidth: MEMORY },
    "bevel siding",
  ],
  [
    "fibre-cement-12",
    "Fibre-cement lap siding 8-1/4 in, 7 in exposed, 12 ft",
    "piece",
    { width: "8-1/4 in", coverageWidth: "7 in", length: "12 ft", thickness: "5/16 in" },
    { width: MEMORY, coverageWidth: MEMORY, thickness: MEMORY },
    "plank cladding",
  ],
  [
    "cedar-shingle",
    "Cedar shingle, bundle, a quarter square",
    "bundle",
    { coverage: "25 sq ft" },
    { coverage: MEMORY },
    "shake wall",
  ],
  [
    "board-siding",
    "Pine shiplap siding 1x8, 12 ft",
    "piece",
    { nominalThickness: "1 in", nominalWidth: "8 in", coverageWidth: "6-3/4 in", length: "12 ft" },
    { coverageWidth: MEMORY },
    "board",
  ],
  [
    "house-wrap",
    "House wrap, roll of 9 x 100 ft",
    "roll",
    { faceWidth: "9 ft", length: "100 ft" },
    {},
    "weather barrier",
  ],
  ["siding-corner", "Outside corner post for siding, 10 ft", "piece", { length: "10 ft" }, {}, "trim"],
  ["siding-channel", "J-channel for siding, 12-1/2 ft", "piece", { length: "12.5 ft" }, {}, "trim"],
];

export const SIDING: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, purchaseUnit, sizes, sources, words]) => ({
    key,
    name,
    words,
    category: "siding",
    purchaseUnit,
    sizes,
    sources,
  }),
);
