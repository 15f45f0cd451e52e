import type { PurchaseUnit } from "../../measure/units.ts";
import type { Sources } from "../material.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { AS_SOLD, MEMORY, PRACTICE, TUBE_LIFE } from "./sources.ts";

type Row = readonly [
  key: string,
  name: string,
  unit: PurchaseUnit,
  sizes: WrittenSizes,
  sources: Sources,
  words?: string,
  shelfLifeDays?: number,
];

const LIFE = { shelfLifeDays: TUBE_LIFE };
const LIFE_DAYS = 270;

/** Flooring comes in boxes that say what they cover; where none was read the box has to say it. */
const ROWS: readonly Row[] = [
  [
    "oak-floor",
    "Oak flooring 3/4 x 3-1/4 in, box of 20 sq ft",
    "box",
    { coverage: "20 sq ft", thickness: "3/4 in", coverageWidth: "3-1/4 in" },
    { coverage: PRACTICE, thickness: PRACTICE, coverageWidth: PRACTICE },
    "hardwood strip",
  ],
  ["laminate-floor", "Laminate flooring, box", "box", {}, {}, "plank click"],
  ["vinyl-floor", "Vinyl plank flooring, box", "box", {}, {}, "click"],
  [
    "tile-12",
    "Floor tile 12 x 12 in",
    "piece",
    { faceWidth: "12 in", faceLength: "12 in" },
    {},
    "ceramic porcelain",
  ],
  [
    "thinset-50",
    "Tile mortar, 50 lb bag",
    "bag",
    { weight: "50 lb" },
    { weight: AS_SOLD },
    "thinset adhesive",
  ],
  [
    "casing",
    "Door casing 2-1/4 in, 7 ft",
    "piece",
    { length: "7 ft", width: "2-1/4 in" },
    { width: PRACTICE },
    "trim moulding",
  ],
  [
    "baseboard",
    "Baseboard 3-1/2 in",
    "linear-foot",
    { width: "3-1/2 in" },
    { width: PRACTICE },
    "trim moulding",
  ],
  ["joint-compound", "Joint compound, pail", "each", {}, LIFE, "drywall mud", LIFE_DAYS],
  ["adhesive", "Construction adhesive, tube", "each", {}, LIFE, "glue subfloor", LIFE_DAYS],
  ["sealant", "Sealant, tube", "each", {}, LIFE, "caulk caulking", LIFE_DAYS],
  [
    "paint",
    "Interior paint, 3.78 L can",
    "each",
    { yield: "3.78 L", coverage: "350 sq ft" },
    { ...LIFE, yield: AS_SOLD, coverage: MEMORY },
    "gallon wall",
    LIFE_DAYS,
  ],
  [
    "primer",
    "Primer, 18.9 L pail",
    "each",
    { yield: "18.9 L" },
    { ...LIFE, yield: AS_SOLD },
    "five gallon paint",
    LIFE_DAYS,
  ],
];

export const OTHER: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, purchaseUnit, sizes, sources, words, shelfLifeDays]) => ({
    key,
    name,
    words,
    category: "other",
    purchaseUnit,
    sizes,
    sources,
    shelfLifeDays,
  }),
);
