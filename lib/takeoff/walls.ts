import type * as z from "zod";
import { type Decimal, decimal } from "../decimal.ts";
import { fields, listOf, withRules } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { area, count, crossChecked, faultIf, length } from "./fields.ts";
import { notSmaller, openingArea, openingFaults, openings } from "./openings.ts";
import { areaIn, line, measure, piecesOf, runIn, sumOf, type TakeoffResult } from "./result.ts";
import { atSpacing } from "./spacing.ts";
import { drawnWall } from "./wall-elevation.ts";

const MOST_WALLS = 60;
const FACES = decimal(2);
const SQUARE = { imperial: 144, metric: 1_000_000 } as const;

type Plates = Readonly<Record<"plateRows" | "plateThickness", Decimal>>;

/** height - plate rows x plate thickness. Units: inches or millimetres. Rounds: never. */
function studLength(wall: Readonly<{ height: Decimal }>, { plateRows, plateThickness }: Plates): Decimal {
  return wall.height.minus(plateRows.times(plateThickness));
}

/**
 * extraStuds: of a wall, for its ends, corners and the walls that meet it, beyond those at the spacing. studsPerOpening:
 * beyond those at the spacing, which stay as cripples. plateRows: bottom and top together. drywallFaces 0, 1 or 2.
 * drywallDeductsFrom: openings of a smaller area (square feet or metres) are not taken off the drywall.
 */
function inputs(system: UnitSystem) {
  const wall = fields({
    length: length(system),
    height: length(system),
    extraStuds: count({ zero: true }).prefault("0"),
    openings: openings(system),
  });
  const entry = fields({
    walls: listOf(wall, MOST_WALLS),
    studSpacing: length(system),
    studsPerOpening: count({ zero: true }),
    plateRows: count({ zero: true }),
    plateThickness: length(system),
    drywallFaces: count({ zero: true }),
    drywallDeductsFrom: area(system, { zero: true }).prefault("0"),
  });
  const some = withRules(entry, [
    { path: "walls", code: "missing", broken: ({ walls }) => Array.isArray(walls) && walls.length === 0 },
  ]);
  return crossChecked(some, (given) => [
    ...given.walls.flatMap((one, index) => [
      ...openingFaults(one.openings, [one.length, one.height], `walls.${index}.openings`),
      ...faultIf(studLength(one, given).lessThanOrEqualTo(0), `walls.${index}.height`, "no-room-for-studs"),
    ]),
    ...faultIf(given.drywallFaces.greaterThan(FACES), "drywallFaces", "too-large"),
  ]);
}
type Inputs = z.output<ReturnType<typeof inputs>>;
type Wall = Inputs["walls"][number];

/** Studs of one wall: those at the spacing with both ends, the extra ones, those of its openings. */
function studsOf(wall: Wall, { studSpacing, studsPerOpening }: Inputs): Decimal {
  const opened = sumOf(wall.openings.map((one) => one.count)).times(studsPerOpening);
  return atSpacing(wall.length, studSpacing).plus(wall.extraStuds).plus(opened);
}

/** Studs of each length, shortest first. */
function studsByLength(given: Inputs): [Decimal, Decimal][] {
  const byLength = new Map<string, [Decimal, Decimal]>();
  for (const wall of given.walls) {
    const length = studLength(wall, given);
    const [, before] = byLength.get(length.toString()) ?? [length, decimal(0)];
    byLength.set(length.toString(), [length, before.plus(studsOf(wall, given))]);
  }
  return [...byLength.values()].sort(([one], [other]) => one.comparedTo(other));
}

/**
 * Framing and faces of some walls.
 *     studs = ceil(length / spacing) + 1 + extra + openings x studs per opening;   stud = height - rows x plate thickness
 *     plates = length x rows, run through openings;   sheathing, wrap = length x height - openings
 *     drywall = faces x (length x height - openings not smaller than the stated area)
 * Units: pieces; feet and square feet, or metres. Rounds: studs up to the next whole per wall. Source: common practice of
 * framing; openings under 32 square feet left in drywall: estimating crib sheet named in tests/references/takeoff-walls.test.ts.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const { walls, plateRows } = given;
  const run = sumOf(walls.map((wall) => wall.length));
  const whole = sumOf(walls.map((wall) => wall.length.times(wall.height)));
  const open = sumOf(walls.map((wall) => openingArea(wall.openings)));
  const least = given.drywallDeductsFrom.times(SQUARE[system]);
  const left = sumOf(walls.map((wall) => openingArea(notSmaller(wall.openings, least))));
  const net = areaIn(system, whole.minus(open));
  const board = areaIn(system, whole.minus(left).times(given.drywallFaces));
  return {
    measures: [
      measure("wallLength", runIn(system, run), "sum(length)"),
      measure("wallArea", areaIn(system, whole), "sum(length × height)"),
      measure("openingArea", areaIn(system, open), "sum(openings)"),
      measure("netArea", net, "wallArea − openingArea"),
      measure("deductedFromDrywall", areaIn(system, left), "sum(openings, drywallDeductsFrom)"),
    ],
    lines: [
      ...line("wallSheathing", net, "netArea"),
      ...line("houseWrap", net, "netArea"),
      ...studsByLength(given).flatMap(([length, studs]) =>
        line(
          "studs",
          piecesOf(studs),
          "sum(ceil(length / studSpacing) + 1 + extraStuds + openings × studsPerOpening)",
          runIn(system, length),
        ),
      ),
      ...line("plates", runIn(system, run.times(plateRows)), "wallLength × plateRows"),
      ...line("drywall", board, "drywallFaces × (wallArea − deductedFromDrywall)"),
    ],
  };
}

export const walls: Calculator<Inputs> = {
  inputs,
  results,
  drawing: (given, system) => ({
    unit: UNITS_OF[system].length,
    views: given.walls.map((wall) => drawnWall(wall, given)),
  }),
};
