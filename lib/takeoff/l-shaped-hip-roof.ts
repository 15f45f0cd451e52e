import type * as z from "zod";
import { type Decimal, decimal } from "../decimal.ts";
import { fields } from "../entry-fields.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { crossChecked, faultIf, length } from "./fields.ts";
import { hipFigures } from "./hip-figures.ts";
import { drawnLShape, type LShape } from "./l-shape-plan.ts";
import { areaIn, line, measure, piecesOf, runIn, type TakeoffResult } from "./result.ts";
import { coveringLines, edgeMeasures, NO_EDGES } from "./roof-measures.ts";
import { halfSpan, slope } from "./slope.ts";

/**
 * length x width: of the main part's walls; the wing stands flush with one end of a long side: wingWidth along that
 * side, wingLength away from it.
 */
function inputs(system: UnitSystem) {
  const entry = fields({
    length: length(system),
    width: length(system),
    wingWidth: length(system),
    wingLength: length(system),
    slope: slope(),
    overhang: length(system, { zero: true }),
  });
  return crossChecked(entry, (given) =>
    faultIf(given.wingWidth.greaterThanOrEqualTo(given.length), "wingWidth", "wing-too-wide"),
  );
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/** A body that keeps its ridge, and a narrower arm that runs into it: how equal slopes part an L. */
type Composed = Readonly<{
  wingIsArm: boolean;
  long: Decimal;
  wide: Decimal;
  armWidth: Decimal;
  armLength: Decimal;
}>;

/**
 * The L as the two rectangles its roof is made of, overhangs included. The wing is the arm where it is no wider than the
 * main part; else the main part is the arm of the wing carried through. Units: as given. Rounds: never.
 */
function composedOf(given: LShape): Composed {
  const around = given.overhang.times(2);
  const [long, wide] = [given.length.plus(around), given.width.plus(around)];
  const wing = given.wingWidth.plus(around);
  if (wing.lessThanOrEqualTo(wide))
    return { wingIsArm: true, long, wide, armWidth: wing, armLength: given.wingLength };
  return {
    wingIsArm: false,
    long: wing,
    wide: wide.plus(given.wingLength),
    armWidth: wide,
    armLength: long.minus(wing),
  };
}

const PIECES = { body: decimal(3), arm: decimal(2), one: decimal(1) } as const;

/**
 * A roof of equal slopes over an L, of two rectangles.
 *     area = plan with overhangs x slope factor
 *     hips = (3 x body run + 2 x arm run + (body run - arm run)) x hip factor;   valley = arm run x hip factor
 *     ridges = |body's sides' difference| + arm length
 * A run is half of the smaller side of the body, half of the arm's width. The last hip is the rest of the body's fourth,
 * above where the arm's ridge meets it. Units: feet and square feet, or metres. Rounds: roots, to 40 digits.
 * Source: Pythagoras on the lines where planes of one slope meet; checked against the areas of the drawn slopes
 * (tests/laws/takeoff-roofs.test.ts).
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const around = given.overhang.times(2);
  const { wingIsArm, long, wide, armWidth, armLength } = composedOf(given);
  const { factor, hip, common } = hipFigures(given.slope);
  const [bodyRun, armRun] = [halfSpan(long, wide), armWidth.dividedBy(2)];
  const rest = bodyRun.minus(armRun);
  const main = given.length.plus(around).times(given.width.plus(around));
  const plan = main.plus(given.wingWidth.plus(around).times(given.wingLength));
  const hipRuns = bodyRun.times(PIECES.body).plus(armRun.times(PIECES.arm)).plus(rest);
  const roof = {
    ...NO_EDGES,
    roofArea: plan.times(factor),
    eaves: given.length.plus(given.width).plus(given.wingLength).plus(around.times(2)).times(2),
    hips: hipRuns.times(hip),
    valleys: armRun.times(hip),
    ridges: long.minus(wide).abs().plus(armLength),
  };
  const hips = (pieces: Decimal, run: Decimal, formula: string) =>
    run.isZero() ? [] : line("hipRafters", piecesOf(pieces), formula, runIn(system, run.times(hip)));
  return {
    measures: [
      ...common,
      measure(
        "planArea",
        areaIn(system, plan),
        "(length + 2 × overhang) × (width + 2 × overhang) + (wingWidth + 2 × overhang) × wingLength",
      ),
      measure("roofArea", areaIn(system, roof.roofArea), "planArea × slopeFactor"),
      measure(
        "bodyLength",
        runIn(system, long),
        wingIsArm ? "length + 2 × overhang" : "wingWidth + 2 × overhang",
      ),
      measure(
        "bodyWidth",
        runIn(system, wide),
        wingIsArm ? "width + 2 × overhang" : "width + wingLength + 2 × overhang",
      ),
      measure(
        "armWidth",
        runIn(system, armWidth),
        wingIsArm ? "wingWidth + 2 × overhang" : "width + 2 × overhang",
      ),
      measure("armLength", runIn(system, armLength), wingIsArm ? "wingLength" : "length − wingWidth"),
      measure("bodyRun", runIn(system, bodyRun), "min(bodyLength, bodyWidth) / 2"),
      measure("armRun", runIn(system, armRun), "armWidth / 2"),
      measure("rafterLength", runIn(system, bodyRun.times(factor)), "bodyRun × slopeFactor"),
      ...edgeMeasures(
        roof,
        {
          hips: "(3 × bodyRun + 2 × armRun + (bodyRun − armRun)) × hipFactor",
          valleys: "armRun × hipFactor",
          ridges: "max(bodyLength, bodyWidth) − min(bodyLength, bodyWidth) + armLength",
          eaves: "2 × (length + width + wingLength + 4 × overhang)",
        },
        system,
      ),
    ],
    lines: [
      ...coveringLines(roof, false, system),
      ...hips(PIECES.body, bodyRun, "3"),
      ...hips(PIECES.arm, armRun, "2"),
      ...hips(PIECES.one, rest, "1"),
      ...line("valleyRafters", piecesOf(PIECES.one), "1", runIn(system, armRun.times(hip))),
      ...line("ridgeBoard", runIn(system, roof.ridges), "ridges"),
    ],
  };
}

export const lShapedHipRoof: Calculator<Inputs> = { inputs, results, drawing: drawnLShape };
