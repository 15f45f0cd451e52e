import { type Decimal, decimal, roundHalfUp } from "../decimal.ts";
import { inUnit } from "./in-unit.ts";
import { unitNamed } from "./unit-aliases.ts";
import { systemOf, UNITS_OF, type UnitSystem } from "./unit-system.ts";
import { UNITS, type UnitCode } from "./units.ts";

/** Why a text is no length. Each is also a fault code with words of its own. */
export type LengthRefusal =
  | "missing"
  | "too-long"
  | "negative"
  | "not-a-length"
  | "length-unit-missing"
  | "mixed-units"
  | "comma-unclear"
  | "fraction-unclear"
  | "inches-past-a-foot";

export type LengthRead =
  | Readonly<{ ok: true; value: Decimal }>
  | Readonly<{ ok: false; reason: LengthRefusal }>;

type Part = Readonly<{ value: Decimal; unit: UnitCode | null }>;

const LONGEST = 60;
/** Places of an inch or millimetre that are kept: a sixty-fourth has six. */
const PLACES = 6;

/** What a phone or a keyboard writes for a mark on a tape. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/[‘’′]/g, "'"],
  [/[“”″]|''/g, '"'],
  [/[⁄∕]/g, "/"],
  [/[−–]/g, "-"],
  [/[½¼¾⅛⅜⅝⅞]/g, " $& "],
  [/½/g, "1/2"],
  [/¼/g, "1/4"],
  [/¾/g, "3/4"],
  [/⅛/g, "1/8"],
  [/⅜/g, "3/8"],
  [/⅝/g, "5/8"],
  [/⅞/g, "7/8"],
  [/\s+/g, " "],
];

const NUMBER = String.raw`(?:(\d+)(?: | ?- ?))?(\d+) ?\/ ?(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+)`;
const PART = new RegExp(String.raw`(?:${NUMBER}) ?(['"]|[a-z]+\.?)?[ -]*`, "iy");
/** 1,220 is twelve hundred to one and a little over one to another; 0,375 is not unclear. */
const UNCLEAR_COMMA = /^[1-9]\d{0,2},\d{3}$/;

function refused(reason: LengthRefusal): LengthRead {
  return { ok: false, reason };
}

function partOf(match: RegExpExecArray): Part | LengthRefusal {
  const [, whole, over, under, plain, word] = match;
  const unit = word === undefined ? null : unitNamed(word);
  if (word !== undefined && (unit === null || UNITS[unit].dimension !== "length")) return "not-a-length";
  if (plain !== undefined)
    return UNCLEAR_COMMA.test(plain) ? "comma-unclear" : { value: decimal(plain.replace(",", ".")), unit };
  if (over === undefined || under === undefined || decimal(under).isZero()) return "not-a-length";
  if (whole !== undefined && decimal(over).greaterThanOrEqualTo(under)) return "fraction-unclear";
  const value = decimal(over)
    .dividedBy(under)
    .plus(whole ?? 0);
  return { value, unit };
}

function partsOf(text: string): readonly Part[] | LengthRefusal {
  const parts: Part[] = [];
  PART.lastIndex = 0;
  while (PART.lastIndex < text.length) {
    const match = PART.exec(text);
    if (match === null) return "not-a-length";
    const part = partOf(match);
    if (typeof part === "string") return part;
    parts.push(part);
  }
  return parts;
}

function joined(first: Part, second: Part, system: UnitSystem): LengthRead {
  const { unit } = first;
  if (unit === null || !(unit === "linear-foot" || unit === "linear-metre") || !first.value.isInteger())
    return refused("not-a-length");
  if (second.unit === null && unit === "linear-metre") return refused("length-unit-missing");
  const lesser = second.unit ?? "inch";
  if (systemOf(lesser) !== systemOf(unit)) return refused("mixed-units");
  const rest = { value: second.value, unit: lesser };
  if (inUnit(rest, unit).greaterThanOrEqualTo(1))
    return refused(unit === "linear-foot" ? "inches-past-a-foot" : "not-a-length");
  return alone({ value: first.value.plus(inUnit(rest, unit)), unit }, system);
}

function alone({ value, unit }: Part, system: UnitSystem): LengthRead {
  const own = UNITS_OF[system].length;
  if (unit !== null && systemOf(unit) !== system) return refused("mixed-units");
  return { ok: true, value: roundHalfUp(inUnit({ value, unit: unit ?? own }, own), PLACES) };
}

/**
 * A length as a carpenter writes it, in the one unit of a system: inches ("8 ft 3-1/2 in", "8' 3 1/2\"", "92 5/8") or
 * millimetres ("2,44 m", "2440 mm", "2440"). A number without a unit is in that unit; a comma is a decimal comma.
 * Units: inch or millimetre. Rounds: once, half up to 6 places (a sixty-fourth is exact, a third is not). Errors:
 * anything else is refused with its reason, never guessed at.
 */
export function lengthOf(text: string, system: UnitSystem): LengthRead {
  if (text.length > LONGEST) return refused("too-long");
  const written = SPELLINGS.reduce((all, [as, plain]) => all.replaceAll(as, plain), text).trim();
  if (written === "") return refused("missing");
  if (/^- ?[\d.,]/.test(written)) return refused("negative");
  const parts = partsOf(written);
  if (typeof parts === "string") return refused(parts);
  const [first, second, more] = parts;
  if (first === undefined || more !== undefined || written.endsWith("-")) return refused("not-a-length");
  return second === undefined ? alone(first, system) : joined(first, second, system);
}

const FOOT = decimal(12);
const FINEST = 64;

function inchesText(value: Decimal): string {
  const whole = value.floor();
  const parts = value.minus(whole).times(FINEST);
  if (parts.isZero() || !parts.isInteger()) return value.toString();
  let [over, under] = [parts.toNumber(), FINEST];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return whole.isZero() ? `${over}/${under}` : `${whole}-${over}/${under}`;
}

/**
 * A length as it is read off a tape: "8 ft 3-1/2 in", "2440 mm". `lengthOf` reads it back unchanged. Units: value in
 * inches or millimetres. Rounds: never; what is no sixty-fourth of an inch is shown in decimals.
 */
export function lengthText(value: Decimal, system: UnitSystem): string {
  if (system === "metric") return `${value} mm`;
  const feet = value.dividedBy(FOOT).floor();
  const inches = value.minus(feet.times(FOOT));
  const words = [
    ...(feet.isZero() ? [] : [`${feet} ft`]),
    ...(inches.isZero() && !feet.isZero() ? [] : [`${inchesText(inches)} in`]),
  ];
  return words.join(" ");
}
