import { Decimal, decimal, roundHalfUp } from "../decimal.ts";
import { textAs } from "../entry-fields.ts";

/** Inches of run a slope is told by, and the steepest that is still a roof. */
const RUN = decimal(12);
const STEEPEST = decimal(24);
const PLACES = 6;

const NUMBER = String.raw`(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+(?:[.,]\d+)?)`;
const OVER = /^(.+?)\s*(?::|\/|\bin\b)\s*(\d+)$/;
const ALONE = new RegExp(`^(?:${NUMBER})$`);

function numberOf(text: string): Decimal | null {
  const [, whole, over, under, plain] = ALONE.exec(text.trim()) ?? [];
  if (plain !== undefined) return decimal(plain.replace(",", "."));
  if (over === undefined || under === undefined || decimal(under).isZero()) return null;
  return decimal(over)
    .dividedBy(under)
    .plus(whole ?? 0);
}

function riseOf(text: string): Decimal | null {
  const [, rise, run] = /^\d+[ -]\d+\/\d+$/.test(text) ? [] : (OVER.exec(text) ?? []);
  if (rise === undefined || run === undefined) return numberOf(text);
  const number = numberOf(rise);
  return number === null || decimal(run).isZero() ? null : number.times(RUN).dividedBy(run);
}

/**
 * A slope as rise in 12: "4/12", "4:12", "4 in 12", "1:3", "3 1/2 in 12", or the bare rise "4". Units: rise per 12 of run,
 * the same in inches and in millimetres. Rounds: half up to 6 places. Errors: missing, negative, not-a-slope, slope-flat
 * (0), slope-too-steep (over 24).
 */
export function slope() {
  return textAs<Decimal>((text) => {
    const written = text.trim();
    if (written === "") return "missing";
    if (written.startsWith("-")) return "negative";
    const rise = riseOf(written);
    if (rise === null) return "not-a-slope";
    const value = roundHalfUp(rise, PLACES);
    if (value.isZero()) return "slope-flat";
    return value.greaterThan(STEEPEST) ? "slope-too-steep" : { value };
  }).meta({ examples: ["4/12"] });
}

/**
 * Length along a slope per length on plan.
 *     sqrt(rise^2 + 12^2) / 12
 * Units: none. Rounds: the root, to 40 digits. Source: Pythagoras; the carpenter's square's "length of common rafters".
 */
export function slopeFactor(rise: Decimal): Decimal {
  return rise.times(rise).plus(RUN.times(RUN)).sqrt().dividedBy(RUN);
}

/**
 * Length of a hip or valley per run of the common rafter, for equal slopes on both sides.
 *     sqrt(rise^2 + 2 x 12^2) / 12
 * Units: none. Rounds: the root, to 40 digits. Source: Pythagoras on the 45 degree line of the plan.
 */
export function hipFactor(rise: Decimal): Decimal {
  return rise.times(rise).plus(RUN.times(RUN).times(2)).sqrt().dividedBy(RUN);
}

/** Rise of a slope over a run. Units: those of run. Rounds: only a twelfth that does not end, to 40 digits. */
export function riseOver(run: Decimal, rise: Decimal): Decimal {
  return run.times(rise).dividedBy(RUN);
}

/** Half of the smaller of two sides: the run of an equal-sloped roof over them. Units: as given. Rounds: never. */
export function halfSpan(one: Decimal, other: Decimal): Decimal {
  return Decimal.min(one, other).dividedBy(2);
}
