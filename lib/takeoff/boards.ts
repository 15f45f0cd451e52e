import type * as z from "zod";
import { Decimal, ONE, ZERO } from "../decimal.ts";
import { choice, fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, marks, rectangle, type Stroke, span, view } from "./drawing.ts";
import { crossChecked, faultIf, length } from "./fields.ts";
import { drawnOpenings, openingArea, openingFaults, openings } from "./openings.ts";
import { areaIn, line, measure, piecesOf, runIn, type TakeoffResult } from "./result.ts";
import { wholeUp } from "./spacing.ts";

/**
 * Boards along `length`, row by row up `height`. gapped: side by side, `step` is the gap between two. lapped: each over
 * the one below, `step` is the width that stays to be seen (the exposure).
 */
function inputs(system: UnitSystem) {
  const entry = fields({
    length: length(system),
    height: length(system),
    boardWidth: length(system),
    laid: choice(["gapped", "lapped"]),
    step: length(system, { zero: true }),
    openings: openings(system),
  });
  return crossChecked(entry, (given) => [
    ...openingFaults(given.openings, [given.length, given.height], "openings"),
    ...(given.laid === "lapped"
      ? [
          ...faultIf(given.step.isZero(), "step", "not-positive"),
          ...faultIf(given.step.greaterThan(given.boardWidth), "step", "cover-too-wide"),
        ]
      : []),
  ]);
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * Rows of boards side by side: ceil((extent + gap) / (width + gap)), the last ripped. Units: as given; result in rows.
 * Rounds: up, once. Source: geometry; n boards and n - 1 gaps fill an extent.
 */
export function gappedRows(extent: Decimal, width: Decimal, gap: Decimal): Decimal {
  return wholeUp(extent.plus(gap).dividedBy(width.plus(gap)));
}

/**
 * Rows of boards that lap: 1 + ceil((extent - width) / exposure); the first covers its whole width. Units: as given;
 * result in rows. Rounds: up, once. Source: geometry.
 */
export function lappedRows(extent: Decimal, width: Decimal, exposure: Decimal): Decimal {
  return ONE.plus(wholeUp(Decimal.max(ZERO, extent.minus(width)).dividedBy(exposure)));
}

/**
 * Boards over a rectangle, by rows.
 *     board length = rows x length - opening area / (board width + gap, or exposure), not below zero
 * Units: feet and square feet, or metres. Rounds: rows up, once; a division that does not end, to 40 digits.
 * Source: geometry.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const { boardWidth, step } = given;
  const lapped = given.laid === "lapped";
  const rows = (lapped ? lappedRows : gappedRows)(given.height, boardWidth, step);
  const each = lapped ? step : boardWidth.plus(step);
  const open = openingArea(given.openings);
  const run = Decimal.max(ZERO, given.length.times(rows).minus(open.dividedBy(each)));
  return {
    measures: [
      measure(
        "rows",
        piecesOf(rows),
        lapped ? "1 + ceil((height − boardWidth) / step)" : "ceil((height + step) / (boardWidth + step))",
      ),
      measure("rowStep", runIn(system, each), lapped ? "step" : "boardWidth + step"),
      measure("openingArea", areaIn(system, open), "sum(openings)"),
    ],
    lines: line("boards", runIn(system, run), "rows × length − openingArea / rowStep"),
  };
}

/** The rectangle with the lines between its rows, from the ground up. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [wide, high, board] = [given.length.toNumber(), given.height.toNumber(), given.boardWidth.toNumber()];
  const step = given.step.toNumber();
  const rows = marks(high, given.laid === "lapped" ? step : board + step).map(
    (y): Stroke => ({ name: "row", from: [0, high - y], to: [wide, high - y] }),
  );
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("elevation", {
        polygons: [rectangle("surface", [0, 0], wide, high), ...drawnOpenings(given.openings, [0, 0], wide)],
        strokes: rows,
        spans: [
          span("length", [0, high], [wide, high]),
          span("height", [wide, high], [wide, 0]),
          span("boardWidth", [0, high], [0, high - board]),
        ],
      }),
    ],
  };
}

export const boards: Calculator<Inputs> = { inputs, results, drawing };
