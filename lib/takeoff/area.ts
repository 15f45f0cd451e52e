import * as z from "zod";
import { type Decimal, decimal } from "../decimal.ts";
import { fields, listOf, withRules } from "../entry-fields.ts";
import type { Fault } from "../fault.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, type Polygon, rectangle, type Span, span, view } from "./drawing.ts";
import { count, crossChecked, faultIf, length } from "./fields.ts";
import { drawnOpenings, openingArea, openings } from "./openings.ts";
import { areaIn, line, measure, sumOf, type TakeoffResult } from "./result.ts";

const MOST_PARTS = 50;
const TWO = decimal(2);

/** rectangle: width x height. triangle: base (width) and height. three-sides: a triangle by its sides. */
function part(system: UnitSystem) {
  const times = { count: count().prefault("1") };
  const [width, height] = [length(system), length(system)];
  const sides = { side: length(system), secondSide: length(system), thirdSide: length(system) };
  return z.discriminatedUnion(
    "shape",
    [
      fields({ shape: z.literal("rectangle"), width, height, ...times }),
      fields({ shape: z.literal("triangle"), width, height, ...times }),
      fields({ shape: z.literal("three-sides"), ...sides, ...times }),
    ],
    { error: "unknown-choice" },
  );
}
type Part = z.output<ReturnType<typeof part>>;

/** Half the sum of three sides less each side; a triangle closes while none of them is zero or below. */
function sidesLeft(one: Part & { shape: "three-sides" }): Decimal[] {
  const half = sumOf([one.side, one.secondSide, one.thirdSide]).dividedBy(TWO);
  return [half, ...[one.side, one.secondSide, one.thirdSide].map((side) => half.minus(side))];
}

/** base x height / 2; by sides: Heron's formula, the root to 40 digits. Units: square inches or millimetres. */
function areaOf(one: Part): Decimal {
  const alone =
    one.shape === "three-sides"
      ? sidesLeft(one)
          .reduce((product, side) => product.times(side))
          .sqrt()
      : one.width.times(one.height).dividedBy(one.shape === "triangle" ? 2 : 1);
  return alone.times(one.count);
}

function inputs(system: UnitSystem) {
  const entry = fields({ parts: listOf(part(system), MOST_PARTS), openings: openings(system) });
  const some = withRules(entry, [{ path: "parts", code: "missing", broken: ({ parts }) => isEmpty(parts) }]);
  return crossChecked(some, (given): Fault[] => {
    const open = given.parts.flatMap((one, index) =>
      faultIf(
        one.shape === "three-sides" && sidesLeft(one).some((side) => !side.isPositive() || side.isZero()),
        `parts.${index}.thirdSide`,
        "not-a-triangle",
      ),
    );
    if (open.length > 0) return open;
    const whole = sumOf(given.parts.map(areaOf));
    return faultIf(openingArea(given.openings).greaterThan(whole), "openings", "larger-than-wall");
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

function isEmpty(list: unknown): boolean {
  return Array.isArray(list) && list.length === 0;
}

/**
 * The area of rectangles and triangles together, less openings.
 *     sum of width x height, of width x height / 2, of sqrt(s (s - a) (s - b) (s - c)) with s half the sides' sum
 * Units: square feet or square metres. Rounds: the root of a triangle by its sides, to 40 digits. Source: Euclid; Heron.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const whole = sumOf(given.parts.map(areaOf));
  const open = openingArea(given.openings);
  const net = areaIn(system, whole.minus(open));
  return {
    measures: [
      measure("wholeArea", areaIn(system, whole), "sum(parts)"),
      measure("openingArea", areaIn(system, open), "sum(openings)"),
      measure("netArea", net, "wholeArea − openingArea"),
    ],
    lines: line("surface", net, "netArea"),
  };
}

type Drawn = Readonly<{ polygon: Polygon; spans: readonly Span[]; width: number }>;

/** A part at a place along a common ground line. */
function drawnPart(one: Part, start: number): Drawn {
  const base = (one.shape === "three-sides" ? one.side : one.width).toNumber();
  const top = one.shape === "three-sides" ? apexOf(one) : { x: base / 2, y: one.height.toNumber() };
  // An obtuse triangle leans out over its own base.
  const x = start + Math.max(0, -top.x);
  const name = one.shape;
  const ground = span(one.shape === "three-sides" ? "side" : "width", [x, 0], [x + base, 0]);
  if (one.shape === "rectangle") {
    const height = span("height", [x + base, 0], [x + base, -top.y]);
    return { polygon: rectangle(name, [x, -top.y], base, top.y), spans: [ground, height], width: base };
  }
  const points: Polygon["points"] = [
    [x, 0],
    [x + top.x, -top.y],
    [x + base, 0],
  ];
  const rest =
    one.shape === "triangle"
      ? [span("height", [x + top.x, 0], [x + top.x, -top.y])]
      : [
          span("secondSide", [x + base, 0], [x + top.x, -top.y]),
          span("thirdSide", [x + top.x, -top.y], [x, 0]),
        ];
  return { polygon: { name, points }, spans: [ground, ...rest], width: x - start + Math.max(base, top.x) };
}

/** Where the second and third sides meet above the first. */
function apexOf(one: Part & { shape: "three-sides" }) {
  const square = (side: Decimal) => side.times(side);
  const [base, right, left] = [one.side, one.secondSide, one.thirdSide];
  const x = square(base).plus(square(left)).minus(square(right)).dividedBy(base.times(TWO));
  const y = square(left).minus(square(x));
  return { x: x.toNumber(), y: Math.sqrt(Math.max(0, y.toNumber())) };
}

/** The parts side by side, openings below them. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  let at = 0;
  const drawn = given.parts.map((one) => {
    const shape = drawnPart(one, at);
    at += shape.width * 1.2;
    return shape;
  });
  const polygons = drawn.map(({ polygon }) => polygon);
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("parts", {
        polygons: [...polygons, ...drawnOpenings(given.openings, [0, at / 20], at)],
        spans: drawn.flatMap(({ spans }) => spans),
      }),
    ],
  };
}

export const area: Calculator<Inputs> = { inputs, results, drawing };
