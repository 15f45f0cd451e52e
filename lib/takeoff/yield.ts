import type * as z from "zod";
import { type Decimal, decimal, roundHalfUp } from "../decimal.ts";
import { fields, name, purchaseUnit, size, textAs } from "../entry-fields.ts";
import { quantityOf } from "../measure/quantity-text.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import type { Quantity } from "../measure/units.ts";
import { crossChecked, faultIf, length } from "./fields.ts";
import { areaIn } from "./result.ts";

/**
 * What one purchase unit gives, as its wrapper, bag or maker's sheet says: a bag 0.6 cubic feet, a bundle of caps 20 ft,
 * a roll 400 square feet, a bundle 21 pieces. source: where that was read.
 */
export const yieldEntry = fields({ unit: purchaseUnit(), holds: size(), source: name() });
export type Yield = z.output<typeof yieldEntry>;

/** Where a yield typed with a takeoff comes from. */
export const TYPED_HERE = "typed here";

const LONGEST = 60;
const MOST: Decimal = decimal(1_000_000);
const PLACES = 6;
/** As in a length: 1,220 is not guessed at; 0,375 is clear. */
const UNCLEAR_COMMA = /^[1-9]\d{0,2},\d{3}(?!\d)/;

const BARE = /^[\d.,/ -]+$/;

/**
 * What one purchase unit gives, as a person types it: "0.6 cu ft", "0,017 m3", "3/4 cu ft", "20 ft", "21 pieces". Rounds:
 * half up to 6 places. Errors: missing, too-long, negative, comma-unclear, length-unit-missing, not-a-size, not-positive, too-large.
 */
export function typedYield() {
  return textAs<Quantity>((text) => {
    const written = text.trim();
    if (written === "") return "missing";
    if (written.length > LONGEST) return "too-long";
    if (/^[-−]/.test(written)) return "negative";
    if (UNCLEAR_COMMA.test(written)) return "comma-unclear";
    const read = quantityOf(written.replace(/^(\d*),(\d)/, "$1.$2"));
    if (read === null) return BARE.test(written) ? "length-unit-missing" : "not-a-size";
    const value = roundHalfUp(read.value, PLACES);
    if (value.isZero()) return "not-positive";
    return value.greaterThan(MOST) ? "too-large" : { value: { value, unit: read.unit } };
  }).meta({ examples: ["0.6 cu ft", "20 ft"] });
}

/** A typed yield as it is kept; `typedYield` reads it back unchanged. Units: as given. Rounds: never. */
export function yieldText({ value, unit }: Quantity): string {
  return `${value.toFixed()} ${unit}`;
}

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
