import type { CalculatorName } from "../../lib/takeoff/calculators.ts";

const roof = { length: "40 ft", width: "24 ft", slope: "4/12" };
const opening = { width: "3 ft", height: "4 ft 6-1/2 in", count: "2" };
const joists = { length: "20 ft", span: "12 ft 3 in", joistSpacing: "16 in" };

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
    studSpacing: "16 in",
    studsPerOpening: "2",
    plateRows: "3",
    plateThickness: "1 1/2",
    drywallFaces: "1",
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
