import type { CalculatorName } from "../../lib/takeoff/calculators.ts";

const roof = { length: "40 ft", width: "24 ft", slope: "4/12" };
const opening = { width: "3 ft", height: "4 ft 6-1/2 in", count: "2" };
const joists = { length: "20 ft", span: "12 ft 3 in", joistSpacing: "16 in" };

const WALLS = {
  studSpacing: "16 in",
  studsPerOpening: "2",
  plateRows: "3",
  plateThickness: "1 1/2",
  drywallFaces: "1",
};

/** One accepted entry of each calculator, in feet and inches, as it might be typed. */
export const TYPED: Readonly<Record<CalculatorName, Readonly<Record<string, unknown>>>> = {
  area: {
    parts: [
      { shape: "rectangle", width: "24 ft", height: "92 5/8" },
      { shape: "triangle", width: "24 ft", height: "8' 3 1/2\"", count: "2" },
      { shape: "three-sides", side: "13 ft", secondSide: "14 ft", thirdSide: "15 ft" },
    ],
    openings: [opening],
  },
  "gable-roof": { ...roof, eaveOverhang: "16 in", rakeOverhang: "0", rafterSpacing: "24 in" },
  "shed-roof": { ...roof, lowOverhang: "1 ft", highOverhang: "0", rakeOverhang: "6", rafterSpacing: "16" },
  "hip-roof": { ...roof, overhang: "18 in" },
  "l-shaped-hip-roof": { ...roof, overhang: "18 in", wingWidth: "16 ft", wingLength: "12 ft 2-2/3 in" },
  roofing: {
    slopedArea: "12.5 squares",
    eaves: "80 ft",
    rakes: "50 ft",
    ridges: "40 ft",
    starterAlongRakes: true,
  },
  "metal-panels": { slopes: [{ eave: "40 ft", slopeLength: "13 ft" }], coverWidth: "36", overallWidth: "38" },
  walls: {
    walls: [{ length: "32 ft", height: "97 1/8", extraStuds: "4", openings: [opening] }],
    ...WALLS,
    drywallDeductsFrom: "32",
  },
  boards: {
    length: "20 ft",
    height: "8 ft",
    boardWidth: "7 1/4",
    laid: "lapped",
    step: "6",
    openings: [opening],
  },
  floor: { ...joists, extraJoists: "2", openings: [opening] },
  deck: { ...joists, boardWidth: "5 1/2", boardGap: "1/8" },
  pavers: {
    length: "12 ft",
    width: "10 ft",
    paverLength: "8",
    paverWidth: "4",
    joint: "1/8",
    baseDepth: "6",
    baseBeyond: "6",
    sandDepth: "1",
  },
  slab: { length: "10 ft", width: "10 ft", thickness: "4 in" },
  footing: { runs: [{ length: "32 ft" }, { length: "24 ft" }], width: "18", depth: "8" },
  tube: { diameter: "8 in", height: "4 ft", count: "6" },
  counts: { items: [{ name: "Door 2868 left", count: "4", parts: [{ name: "Hinge", perItem: "3" }] }] },
};

const LONG = { length: "300 ft", width: "4 ft" };
const SMALL = { length: "4 in", width: "3 in" };

/** Entries that are hard to draw: very long and narrow, very small, very many. */
export const EXTREME: Readonly<Record<CalculatorName, readonly Readonly<Record<string, unknown>>[]>> = {
  area: [
    { parts: [{ shape: "rectangle", width: "300 ft", height: "1 ft" }] },
    { parts: [{ shape: "three-sides", side: "100 ft", secondSide: "99 ft", thirdSide: "2 ft" }] },
    {
      parts: Array.from({ length: 12 }, (_, at) => ({
        shape: at % 2 === 0 ? "triangle" : "rectangle",
        width: `${at + 1} ft`,
        height: "6 in",
      })),
    },
  ],
  "gable-roof": [
    { ...LONG, slope: "1/12", eaveOverhang: "1", rakeOverhang: "1" },
    { ...SMALL, slope: "24", eaveOverhang: "12", rakeOverhang: "0" },
  ],
  "shed-roof": [
    { ...LONG, slope: "1/12", lowOverhang: "1", highOverhang: "1", rakeOverhang: "0" },
    { ...SMALL, slope: "24", lowOverhang: "12", highOverhang: "1", rakeOverhang: "3" },
  ],
  "hip-roof": [
    { ...LONG, slope: "1/12", overhang: "1" },
    { ...SMALL, slope: "24", overhang: "0" },
  ],
  "l-shaped-hip-roof": [
    { ...LONG, slope: "1", overhang: "1", wingWidth: "2 ft", wingLength: "1 ft" },
    { length: "30 ft", width: "4 ft", slope: "24", overhang: "0", wingWidth: "3 ft", wingLength: "200 ft" },
  ],
  roofing: [{ slopedArea: "1", eaves: "1" }],
  "metal-panels": [
    { slopes: [{ eave: "300 ft", slopeLength: "2 ft" }], coverWidth: "36" },
    { slopes: Array.from({ length: 9 }, () => ({ eave: "2 ft", slopeLength: "40 ft" })), coverWidth: "9" },
  ],
  walls: [
    {
      ...WALLS,
      walls: [
        { length: "300 ft", height: "8 ft" },
        ...Array.from({ length: 6 }, () => ({ length: "1 ft", height: "8 ft" })),
      ],
    },
    { ...WALLS, walls: [{ length: "6 in", height: "30 ft", openings: [{ width: "3", height: "2 ft" }] }] },
  ],
  boards: [{ length: "300 ft", height: "8", boardWidth: "6", laid: "lapped", step: "4" }],
  floor: [
    { length: "300 ft", span: "2 ft", joistSpacing: "16" },
    { length: "6", span: "30 ft", joistSpacing: "3" },
  ],
  deck: [
    { length: "300 ft", span: "2 ft", joistSpacing: "16", boardWidth: "5 1/2", boardGap: "1/8" },
    { length: "6", span: "30 ft", joistSpacing: "3", boardWidth: "1", boardGap: "0" },
  ],
  pavers: [
    {
      ...LONG,
      paverLength: "8",
      paverWidth: "4",
      joint: "1/8",
      baseDepth: "6",
      baseBeyond: "6",
      sandDepth: "1",
    },
    {
      ...SMALL,
      paverLength: "1",
      paverWidth: "1",
      joint: "0",
      baseDepth: "24",
      baseBeyond: "2 ft",
      sandDepth: "1/4",
    },
  ],
  slab: [
    { ...LONG, thickness: "2" },
    { ...SMALL, thickness: "10 ft" },
  ],
  footing: [
    { runs: Array.from({ length: 20 }, () => ({ length: "100 ft" })), width: "12", depth: "6" },
    { runs: [{ length: "1 ft" }], width: "10 ft", depth: "1" },
  ],
  tube: [
    { diameter: "6", height: "60 ft" },
    { diameter: "10 ft", height: "1" },
  ],
  counts: [{ items: [{ name: "a very long name of a door with everything said about it", count: "100" }] }],
};
