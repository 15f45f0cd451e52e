import type { CalculatorName } from "../../../../lib/takeoff/calculators.ts";

export type InputField = Readonly<{
  name: FieldName;
  kind: "length" | "area" | "slope" | "count" | "text" | "flag" | "choice";
  optional?: true;
  choices?: readonly ChoiceName[];
  /** Asked only while another field of the same row says so. */
  when?: Readonly<{ field: FieldName; is: readonly ChoiceName[] }>;
}>;
/** A repeated row of fields; rows may hold rows. */
export type InputRows = Readonly<{ name: RowsName; rows: InputShape; most: number }>;
export type InputShape = readonly (InputField | InputRows)[];

export type RowsName = "parts" | "openings" | "slopes" | "walls" | "runs" | "items";
export type ChoiceName = "rectangle" | "triangle" | "three-sides" | "gapped" | "lapped";
export type FieldName =
  | "shape"
  | "width"
  | "height"
  | "side"
  | "secondSide"
  | "thirdSide"
  | "count"
  | "length"
  | "slope"
  | "eaveOverhang"
  | "rakeOverhang"
  | "rafterSpacing"
  | "starterAlongRakes"
  | "lowOverhang"
  | "highOverhang"
  | "overhang"
  | "wingWidth"
  | "wingLength"
  | "slopedArea"
  | "eaves"
  | "rakes"
  | "ridges"
  | "hips"
  | "valleys"
  | "highEdges"
  | "eave"
  | "slopeLength"
  | "coverWidth"
  | "overallWidth"
  | "coverSource"
  | "extraStuds"
  | "studSpacing"
  | "studsPerOpening"
  | "plateRows"
  | "plateThickness"
  | "drywallFaces"
  | "drywallDeductsFrom"
  | "boardWidth"
  | "laid"
  | "step"
  | "span"
  | "joistSpacing"
  | "extraJoists"
  | "rimRows"
  | "boardGap"
  | "paverLength"
  | "paverWidth"
  | "joint"
  | "baseDepth"
  | "baseBeyond"
  | "sandDepth"
  | "thickness"
  | "depth"
  | "diameter"
  | "name"
  | "perItem";

function lengths(...names: FieldName[]): InputField[] {
  return names.map((name) => ({ name, kind: "length" }));
}
function count(name: FieldName): InputField {
  return { name, kind: "count" };
}
const maybe = (field: InputField): InputField => ({ ...field, optional: true });
const COUNT = maybe(count("count"));
const SLOPE: InputField = { name: "slope", kind: "slope" };
const STARTER: InputField = { name: "starterAlongRakes", kind: "flag" };
const SPACING: InputField = { name: "rafterSpacing", kind: "length", optional: true };
const OPENINGS: InputRows = { name: "openings", rows: [...lengths("width", "height"), COUNT], most: 50 };
const JOISTS = [
  ...lengths("length", "span", "joistSpacing"),
  maybe(count("extraJoists")),
  maybe(count("rimRows")),
];
const BY_BASE = { field: "shape", is: ["rectangle", "triangle"] } as const;
const BY_SIDES = { field: "shape", is: ["three-sides"] } as const;

/** What each calculator asks, in the order it is asked. */
export const INPUT_SHAPES: Readonly<Record<CalculatorName, InputShape>> = {
  area: [
    {
      name: "parts",
      most: 50,
      rows: [
        { name: "shape", kind: "choice", choices: ["rectangle", "triangle", "three-sides"] },
        ...lengths("width", "height").map((field) => ({ ...field, when: BY_BASE })),
        ...lengths("side", "secondSide", "thirdSide").map((field) => ({ ...field, when: BY_SIDES })),
        COUNT,
      ],
    },
    OPENINGS,
  ],
  "gable-roof": [
    ...lengths("length", "width"),
    SLOPE,
    ...lengths("eaveOverhang", "rakeOverhang"),
    SPACING,
    STARTER,
  ],
  "shed-roof": [
    ...lengths("length", "width"),
    SLOPE,
    ...lengths("lowOverhang", "highOverhang", "rakeOverhang"),
    SPACING,
    STARTER,
  ],
  "hip-roof": [...lengths("length", "width"), SLOPE, ...lengths("overhang")],
  "l-shaped-hip-roof": [
    ...lengths("length", "width", "wingWidth", "wingLength"),
    SLOPE,
    ...lengths("overhang"),
  ],
  roofing: [
    { name: "slopedArea", kind: "area" },
    ...lengths("eaves"),
    ...lengths("rakes", "ridges", "hips", "valleys", "highEdges").map(maybe),
    STARTER,
  ],
  "metal-panels": [
    { name: "slopes", rows: [...lengths("eave", "slopeLength"), COUNT], most: 40 },
    ...lengths("coverWidth"),
    ...lengths("overallWidth").map(maybe),
    { name: "coverSource", kind: "text", optional: true },
  ],
  walls: [
    { name: "walls", rows: [...lengths("length", "height"), maybe(count("extraStuds")), OPENINGS], most: 60 },
    ...lengths("studSpacing"),
    count("studsPerOpening"),
    count("plateRows"),
    ...lengths("plateThickness"),
    count("drywallFaces"),
    { name: "drywallDeductsFrom", kind: "area", optional: true },
  ],
  boards: [
    ...lengths("length", "height", "boardWidth"),
    { name: "laid", kind: "choice", choices: ["gapped", "lapped"] },
    ...lengths("step"),
    OPENINGS,
  ],
  floor: [...JOISTS, OPENINGS],
  deck: [...JOISTS, ...lengths("boardWidth", "boardGap")],
  pavers: lengths(
    "length",
    "width",
    "paverLength",
    "paverWidth",
    "joint",
    "baseDepth",
    "baseBeyond",
    "sandDepth",
  ),
  slab: [...lengths("length", "width", "thickness"), COUNT],
  footing: [{ name: "runs", rows: lengths("length"), most: 60 }, ...lengths("width", "depth")],
  tube: [...lengths("diameter", "height"), COUNT],
  counts: [
    {
      name: "items",
      rows: [
        { name: "name", kind: "text" },
        count("count"),
        { name: "parts", rows: [{ name: "name", kind: "text" }, count("perItem")], most: 20 },
      ],
      most: 100,
    },
  ],
};
