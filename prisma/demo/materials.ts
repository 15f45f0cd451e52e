import { demoId } from "./id.ts";

/** Which stores carry it (M Mill Road, K Kestrel Hill, L Lantern Line), how often it is looked at, and its usual price. */
type Carried = Readonly<{ stores: string; everyDays: number; cents: number }>;
type DemoMaterial = Readonly<{
  key: string;
  name: string;
  category: string;
  purchaseUnit: string;
  dimensions: Readonly<Record<string, string>>;
  /** What makes it another material beside its sizes: hand, slab or prehung, treatment. */
  identity?: Readonly<Record<string, string>>;
  carried: Carried;
}>;

const panel = { faceWidth: "48 in", faceLength: "96 in" };
const sheet = (
  key: string,
  name: string,
  thickness: string,
  weight: string,
  carried: Carried,
): DemoMaterial => ({
  key,
  name,
  category: "sheet-goods",
  purchaseUnit: "sheet",
  dimensions: { ...panel, nominalThickness: thickness, thickness, weight },
  carried,
});
const board = (
  key: string,
  name: string,
  size: [string, string],
  length: string,
  carried: Carried,
): DemoMaterial => ({
  key,
  name,
  category: "dimensional-lumber",
  purchaseUnit: "piece",
  dimensions: { nominalThickness: `${size[0]} in`, nominalWidth: `${size[1]} in`, length },
  carried,
});
const other = (
  key: string,
  name: string,
  category: string,
  purchaseUnit: string,
  dimensions: Record<string, string>,
  carried: Carried,
  identity: Record<string, string> = {},
): DemoMaterial => ({
  key,
  name,
  category,
  purchaseUnit,
  dimensions,
  identity,
  carried,
});
/** A door or window by the size of its leaf or frame. */
const opening = (width: string, height: string, more: Record<string, string> = {}) => ({
  width: `${width} in`,
  length: `${height} in`,
  ...more,
});
const seen = (stores: string, everyDays: number, cents: number): Carried => ({ stores, everyDays, cents });

/** The demo's materials: kinds and sizes of the trade, prices invented. Sheet weights: 3 psf per inch rule (rule of the trade, quoted). */
export const DEMO_MATERIALS: readonly DemoMaterial[] = [
  sheet("ply12", "Spruce plywood 1/2 in, 4x8", "0.5 in", "48 lb", seen("MKL", 18, 3180)),
  sheet("ply58", "Spruce plywood 5/8 in, 4x8", "0.625 in", "60 lb", seen("MK", 30, 4120)),
  sheet("ply34", "Fir plywood 3/4 in, 4x8", "0.75 in", "69 lb", seen("MK", 35, 5890)),
  sheet("osb716", "Oriented strand board 7/16 in, 4x8", "0.4375 in", "44.8 lb", seen("MKL", 21, 1890)),
  sheet(
    "osb58tg",
    "Oriented strand board 5/8 in, tongue and groove, 4x8",
    "0.625 in",
    "66.56 lb",
    seen("MK", 40, 3290),
  ),
  sheet("gyp12", "Gypsum board 1/2 in, 4x8", "0.5 in", "51.2 lb", seen("MK", 28, 1749)),
  sheet("gyp58", "Gypsum board 5/8 in, 4x8", "0.625 in", "70.4 lb", seen("MK", 45, 2198)),
  sheet("cem12", "Cement board 1/2 in, 3x5", "0.5 in", "40 lb", seen("K", 50, 1985)),
  board("stud", "Stud 2x4, 92-5/8 in", ["2", "4"], "92.625 in", seen("MKL", 18, 418)),
  board("2x4x8", "Spruce 2x4, 8 ft", ["2", "4"], "8 ft", seen("MK", 30, 448)),
  board("2x6x8", "Spruce 2x6, 8 ft", ["2", "6"], "8 ft", seen("MK", 40, 726)),
  board("2x6x12", "Spruce 2x6, 12 ft", ["2", "6"], "12 ft", seen("MKL", 24, 1148)),
  board("2x8x12", "Spruce 2x8, 12 ft", ["2", "8"], "12 ft", seen("MK", 40, 1672)),
  board("2x10x14", "Spruce 2x10, 14 ft", ["2", "10"], "14 ft", seen("MK", 35, 2795)),
  {
    ...board("pt2x6x12", "Pressure-treated 2x6, 12 ft", ["2", "6"], "12 ft", seen("M", 150, 1680)),
    identity: { treatment: "above-ground" },
  },
  board("strap", "Strapping 1x3, 8 ft", ["1", "3"], "8 ft", seen("M", 60, 212)),
  other(
    "shingle",
    "Asphalt shingle, laminated, bundle",
    "roofing",
    "bundle",
    { coverage: "33.3 sq ft", weight: "78 lb" },
    seen("MKL", 24, 3390),
  ),
  other("starter", "Starter strip, bundle", "roofing", "bundle", { length: "105 ft" }, seen("MK", 60, 4650)),
  other("ridgecap", "Ridge cap, bundle", "roofing", "bundle", { length: "25 ft" }, seen("MK", 60, 5875)),
  other(
    "felt",
    "Roofing underlayment, roll of 400 sq ft",
    "roofing",
    "roll",
    { coverage: "400 sq ft" },
    seen("MK", 60, 3475),
  ),
  other("drip", "Drip edge, 10 ft", "roofing", "piece", { length: "10 ft" }, seen("K", 70, 1089)),
  other(
    "metal",
    "Metal roofing panel, 36 in cover, 12 ft",
    "roofing",
    "piece",
    { coverage: "36 sq ft", length: "12 ft" },
    seen("K", 400, 4725),
  ),
  other(
    "ice",
    "Eave protection membrane, roll of 200 sq ft",
    "roofing",
    "roll",
    { coverage: "200 sq ft" },
    seen("M", 70, 10895),
  ),
  other(
    "door36",
    "Entry door 36 in, left hand, 6-9/16 jamb",
    "doors",
    "each",
    opening("36", "80", { jambDepth: "6.5625 in" }),
    seen("MKL", 30, 48600),
    { hand: "left", doorKind: "prehung" },
  ),
  other(
    "door30",
    "Interior door slab 30 x 80 in",
    "doors",
    "each",
    opening("30", "80"),
    seen("MK", 45, 8950),
    { doorKind: "slab" },
  ),
  other(
    "door32pre",
    "Interior door 32 x 80 in, right hand, prehung, 4-9/16 jamb",
    "doors",
    "each",
    opening("32", "80", { jambDepth: "4.5625 in" }),
    seen("MK", 50, 16800),
    { hand: "right", doorKind: "prehung" },
  ),
  other(
    "win3648",
    "Window 36 x 48 in, casement, right hand",
    "windows",
    "each",
    opening("36", "48"),
    seen("K", 60, 41900),
    { hand: "right" },
  ),
  other("win2436", "Window 24 x 36 in, fixed", "windows", "each", opening("24", "36"), seen("K", 420, 24300)),
  other("clap", "Wood siding, clapboard 6 in, linear foot", "siding", "linear-foot", {}, seen("M", 300, 198)),
  other(
    "wrap",
    "House wrap, roll of 900 sq ft",
    "siding",
    "roll",
    { coverage: "900 sq ft" },
    seen("M", 75, 11950),
  ),
  other(
    "batt",
    "Mineral batt R-22, 15 in, bag",
    "insulation",
    "bag",
    { coverage: "39.8 sq ft" },
    seen("MK", 35, 6289),
  ),
  other(
    "xps",
    "Foam board 2 in, 2x8",
    "insulation",
    "sheet",
    { faceWidth: "24 in", faceLength: "96 in" },
    seen("MK", 50, 4295),
  ),
  other(
    "poly",
    "Vapour barrier 6 mil, roll of 500 sq ft",
    "insulation",
    "roll",
    { coverage: "500 sq ft" },
    seen("M", 75, 5450),
  ),
  other("conc", "Concrete mix, 80 lb bag", "masonry", "bag", { weight: "80 lb" }, seen("MK", 50, 949)),
  other("block", "Concrete block 8 in", "masonry", "piece", {}, seen("", 80, 429)),
  other("mortar", "Mortar mix, 66 lb bag", "masonry", "bag", { weight: "66 lb" }, seen("K", 80, 1195)),
  other(
    "nail",
    "Framing nail 3-1/4 in, box",
    "fasteners",
    "box",
    { pieces: "2500 each" },
    seen("MK", 60, 7995),
  ),
  other(
    "screw",
    "Drywall screw 1-1/4 in, box",
    "fasteners",
    "box",
    { pieces: "1000 each" },
    seen("M", 80, 1749),
  ),
  other(
    "floor",
    "Oak flooring 3/4 in, box of 20 sq ft",
    "other",
    "box",
    { coverage: "20 sq ft" },
    seen("KL", 40, 11900),
  ),
  other("paint", "Interior paint, pail", "other", "each", {}, seen("M", 90, 15900)),
];

/** The id of a demo material by its key. */
export function materialId(key: string): string {
  return demoId(`material ${key}`);
}
