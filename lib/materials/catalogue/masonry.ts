import type { PurchaseUnit } from "../../measure/units.ts";
import type { Sources } from "../material.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { AS_SOLD, BAG_YIELD, BRICK, CEMENT_LIFE, MEMORY, MODULE } from "./sources.ts";

type Row = readonly [
  key: string,
  name: string,
  unit: PurchaseUnit,
  sizes: WrittenSizes,
  sources: Sources,
  words?: string,
  shelfLifeDays?: number,
];

const CEMENT = { shelfLifeDays: CEMENT_LIFE };
const CEMENT_DAYS = 90;

/** A brick or block covers its module, joint and all (2-2/3 in rounded up, so that 100 square feet are 675 and not 676); a bag makes what it says it makes. */
const ROWS: readonly Row[] = [
  [
    "concrete-80",
    "Concrete mix, 80 lb bag",
    "bag",
    { weight: "80 lb", yield: "0.6 cu ft" },
    { ...CEMENT, weight: AS_SOLD, yield: BAG_YIELD },
    "premix",
    CEMENT_DAYS,
  ],
  [
    "concrete-60",
    "Concrete mix, 60 lb bag",
    "bag",
    { weight: "60 lb", yield: "0.45 cu ft" },
    { ...CEMENT, weight: AS_SOLD, yield: BAG_YIELD },
    "premix",
    CEMENT_DAYS,
  ],
  [
    "concrete-40",
    "Concrete mix, 40 lb bag",
    "bag",
    { weight: "40 lb", yield: "0.3 cu ft" },
    { ...CEMENT, weight: AS_SOLD, yield: BAG_YIELD },
    "premix",
    CEMENT_DAYS,
  ],
  [
    "mortar-60",
    "Mortar mix, 60 lb bag",
    "bag",
    { weight: "60 lb" },
    { ...CEMENT, weight: AS_SOLD },
    "masonry cement",
    CEMENT_DAYS,
  ],
  [
    "cement-94",
    "Portland cement, 94 lb bag",
    "bag",
    { weight: "94 lb" },
    { ...CEMENT, weight: AS_SOLD },
    undefined,
    CEMENT_DAYS,
  ],
  ["ready-mix", "Ready-mixed concrete", "cubic-yard", {}, {}, "truck"],
  [
    "brick-modular",
    "Modular brick",
    "piece",
    { faceWidth: "8 in", faceLength: "2.666667 in" },
    { faceWidth: BRICK, faceLength: BRICK },
    "clay",
  ],
  [
    "brick-standard",
    "Standard brick 8 x 2-1/4 in, 3/8 joint",
    "piece",
    { faceWidth: "8-3/8 in", faceLength: "2-5/8 in" },
    { faceWidth: MODULE, faceLength: MODULE },
    "clay",
  ],
  [
    "brick-utility",
    "Utility brick, 4 x 12 module",
    "piece",
    { faceWidth: "12 in", faceLength: "4 in" },
    { faceWidth: MODULE, faceLength: MODULE },
    "clay",
  ],
  [
    "block-8",
    "Concrete block 8 in, 8 x 16 module",
    "piece",
    { faceWidth: "16 in", faceLength: "8 in" },
    { faceWidth: MODULE, faceLength: MODULE },
    "CMU cinder",
  ],
  [
    "paver-4x8",
    "Paver 4 x 8 in, butt-jointed",
    "piece",
    { faceWidth: "8 in", faceLength: "4 in" },
    { faceWidth: MODULE, faceLength: MODULE },
    "paving brick",
  ],
  [
    "gravel",
    "Crushed stone 3/4 in",
    "cubic-yard",
    { density: "100 pcf" },
    { density: MEMORY },
    "gravel base aggregate",
  ],
  ["sand-yard", "Bedding sand", "cubic-yard", { density: "100 pcf" }, { density: MEMORY }, "aggregate"],
  ["sand-50", "Sand, 50 lb bag", "bag", { weight: "50 lb" }, { weight: AS_SOLD }],
];

export const MASONRY: readonly CatalogueEntry[] = ROWS.map(
  ([key, name, purchaseUnit, sizes, sources, words, shelfLifeDays]) => ({
    key,
    name,
    words,
    category: "masonry",
    purchaseUnit,
    sizes,
    sources,
    shelfLifeDays,
  }),
);
