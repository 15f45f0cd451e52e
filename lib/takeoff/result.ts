import { type Decimal, ZERO } from "../decimal.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Quantity } from "../measure/units.ts";

/** What a takeoff can come to need; each may become a requirement. */
export const LINE_NAMES = [
  "surface",
  "roofSheathing",
  "underlayment",
  "shingles",
  "metalPanels",
  "starter",
  "ridgeCap",
  "valleyLining",
  "edgeTrim",
  "iceBarrier",
  "rafters",
  "hipRafters",
  "valleyRafters",
  "ridgeBoard",
  "wallSheathing",
  "houseWrap",
  "drywall",
  "studs",
  "plates",
  "joists",
  "rims",
  "subfloor",
  "deckBoards",
  "boards",
  "pavers",
  "gravel",
  "beddingSand",
  "edging",
  "concrete",
  "counted",
] as const;
export type LineName = (typeof LINE_NAMES)[number];

/**
 * So much of something, whatever material it becomes, before waste. cut: the least length of each of the pieces, null
 * where pieces have none or may be joined. label: what the person called it, for counted things. formula: how it came
 * about, in names of the entry's fields and of the measures.
 */
export type TakeoffLine = Readonly<{
  name: LineName;
  label: string | null;
  quantity: Quantity;
  cut: Quantity | null;
  formula: string;
}>;

/** A step on the way, in the order it is reckoned: a quantity, or a bare number such as a slope factor. */
export type TakeoffMeasure = Readonly<{ name: string; value: Quantity | Decimal; formula: string }>;

export type TakeoffResult = Readonly<{
  measures: readonly TakeoffMeasure[];
  lines: readonly TakeoffLine[];
}>;

const PER_RUN = { imperial: 12, metric: 1000 } as const;

/** Inches or millimetres as feet or metres. Rounds: only a division that does not end, to 40 digits. */
export function runIn(system: UnitSystem, value: Decimal): Quantity {
  return { value: value.dividedBy(PER_RUN[system]), unit: UNITS_OF[system].run };
}

/** Square inches or millimetres as square feet or metres. Rounds: as runIn. */
export function areaIn(system: UnitSystem, value: Decimal): Quantity {
  return { value: value.dividedBy(PER_RUN[system] ** 2), unit: UNITS_OF[system].area };
}

/** Cubic inches or millimetres as cubic feet or metres. Rounds: as runIn. */
export function volumeIn(system: UnitSystem, value: Decimal): Quantity {
  return { value: value.dividedBy(PER_RUN[system] ** 3), unit: UNITS_OF[system].volume };
}

/** Pieces, as many as stated. Units: pieces. Rounds: never. */
export function piecesOf(value: Decimal): Quantity {
  return { value, unit: "piece" };
}

/** A line of something measured; null when there is none of it. */
export function line(name: LineName, quantity: Quantity, formula: string, cut: Quantity | null = null) {
  return quantity.value.isZero() ? [] : [{ name, label: null, quantity, cut, formula }];
}

/** A measure with the formula it came by. */
export function measure(name: string, value: Quantity | Decimal, formula: string): TakeoffMeasure {
  return { name, value, formula };
}

/** The sum of some values. Units: as given. Rounds: never. */
export function sumOf(values: readonly Decimal[]): Decimal {
  return values.reduce((sum, value) => sum.plus(value), ZERO);
}
