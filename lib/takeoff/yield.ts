import type * as z from "zod";
import { fields, name, purchaseUnit, size } from "../entry-fields.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import { crossChecked, faultIf, length } from "./fields.ts";
import { areaIn } from "./result.ts";

/**
 * What one purchase unit gives, as its wrapper, bag or maker's sheet says: a bag 0.6 cubic feet, a bundle of caps 20 ft,
 * a roll 400 square feet, a bundle 21 pieces. source: where that was read.
 */
export const yieldEntry = fields({ unit: purchaseUnit(), holds: size(), source: name() });
export type Yield = z.output<typeof yieldEntry>;

/** A roll laid with laps: its size and how far each course lies over the one below. */
export function rollEntry(system: UnitSystem) {
  const entry = fields({
    width: length(system),
    length: length(system),
    lap: length(system, { zero: true }),
    source: name(),
  });
  return crossChecked(entry, (roll) =>
    faultIf(roll.lap.greaterThanOrEqualTo(roll.width), "lap", "cover-too-wide"),
  );
}
export type Roll = z.output<ReturnType<typeof rollEntry>>;

/**
 * What a roll covers net of its side lap.
 *     (width - lap) x length
 * End laps belong to the waste. Units: square feet or square metres. Rounds: only a division that does not end, to 40
 * digits. Source: geometry; felt coverage article named in tests/references/takeoff-roofs.test.ts.
 */
export function rollYield(roll: Roll, system: UnitSystem): Yield {
  const holds = areaIn(system, roll.width.minus(roll.lap).times(roll.length));
  return { unit: "roll", holds, source: roll.source };
}
