import type * as z from "zod";
import { fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import { gappedRows } from "./boards.ts";
import type { Calculator } from "./calculator.ts";
import { marks, type Stroke } from "./drawing.ts";
import { length } from "./fields.ts";
import { drawnJoists, joistFields, joistLines } from "./joists.ts";
import { areaIn, line, measure, piecesOf, runIn, type TakeoffResult } from "./result.ts";

/** boardWidth: the face of a board, actual; boards run along `length`, across the joists. */
function inputs(system: UnitSystem) {
  return fields({
    ...joistFields(system),
    boardWidth: length(system),
    boardGap: length(system, { zero: true }),
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * A rectangular deck without stairs: joists, rims and boards.
 *     rows = ceil((span + gap) / (board width + gap));   boards = rows x length
 * Units: pieces; feet and square feet, or metres. Rounds: joists and rows up to the next whole. Source: geometry; common
 * practice of framing.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const rows = gappedRows(given.span, given.boardWidth, given.boardGap);
  return {
    measures: [
      measure("deckArea", areaIn(system, given.length.times(given.span)), "length × span"),
      measure("rows", piecesOf(rows), "ceil((span + boardGap) / (boardWidth + boardGap))"),
    ],
    lines: [
      ...joistLines(given, system),
      ...line("deckBoards", runIn(system, rows.times(given.length)), "rows × length"),
    ],
  };
}

export const deck: Calculator<Inputs> = {
  inputs,
  results,
  drawing: (given, system) => {
    const [wide, deep] = [given.length.toNumber(), given.span.toNumber()];
    const rows = marks(deep, given.boardWidth.plus(given.boardGap).toNumber()).map(
      (y): Stroke => ({ name: "row", from: [0, y], to: [wide, y] }),
    );
    return { unit: UNITS_OF[system].length, views: [drawnJoists(given, { strokes: rows })] };
  },
};
