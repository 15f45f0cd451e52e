import { type Decimal, decimal, roundHalfUp, ZERO } from "../decimal.ts";
import type { Fault } from "../fault.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { inUnit } from "../measure/in-unit.ts";
import { type LengthRefusal, lengthOf } from "../measure/length-text.ts";
import { type PurchaseUnit, type Quantity, UNITS } from "../measure/units.ts";

/** One row of a tally: so many pieces of one length, as read off the tape; null: of the material's own length, or of none. */
export type TallyRow = Readonly<{ pieces: Decimal; length: string | null }>;

type LengthOfPiece =
  | Readonly<{ ok: true; value: Quantity }>
  | Readonly<{ ok: false; reason: LengthRefusal | "not-positive" }>;

/**
 * A piece's length as a person writes it: "8 ft", "10 ft 3 in", "2.4 m". A bare number is refused: 8 may be feet or inches.
 * Units: inches or millimetres, as it was written. Rounds: as `lengthOf`.
 */
export function lengthOfPiece(text: string): LengthOfPiece {
  if (/\d/.test(text) && !/[a-z'"’‘′“”″]/i.test(text)) return { ok: false, reason: "length-unit-missing" };
  const imperial = lengthOf(text, "imperial");
  const read = !imperial.ok && imperial.reason === "mixed-units" ? lengthOf(text, "metric") : imperial;
  if (!read.ok) return read;
  if (!read.value.greaterThan(ZERO)) return { ok: false, reason: "not-positive" };
  return { ok: true, value: { value: read.value, unit: read === imperial ? "inch" : "millimetre" } };
}

/** What a tally comes to in the material's purchase unit, or what is wrong with which row. */
export type TallySum =
  | Readonly<{ ok: true; quantity: Decimal; unit: PurchaseUnit }>
  | Readonly<{ ok: false; faults: readonly Fault[] }>;

type RowSum = Readonly<{ value: Decimal }> | Omit<Fault, "path">;

/** Pieces of a stated length where the material is bought by the piece: each gives as many whole ones as it is long. */
function asPieces(material: Material, pieces: Decimal, length: Quantity): Quantity | Omit<Fault, "path"> {
  const own = material.dimensions.length ?? material.dimensions.faceLength;
  if (own === undefined) return { code: "unit-not-convertible", values: { reason: "length-unknown" } };
  const each = roundHalfUp(inUnit(length, own.unit).dividedBy(own.value), 12).floor();
  if (each.isZero())
    return { code: "shorter-than-piece", values: { own: `${own.value.toFixed()} ${own.unit}` } };
  return { value: pieces.times(each), unit: "piece" };
}

function sumOfRow(material: Material, { pieces, length }: TallyRow): RowSum {
  const unit = material.purchaseUnit;
  let counted: Quantity | Omit<Fault, "path"> = { value: pieces, unit: "piece" };
  if (length !== null) {
    const read = lengthOfPiece(length);
    if (!read.ok) return { code: read.reason };
    counted =
      UNITS[unit].dimension === "count"
        ? asPieces(material, pieces, read.value)
        : { value: pieces.times(read.value.value), unit: read.value.unit };
  }
  if ("code" in counted) return counted;
  const sum = convertFor(material, counted, unit);
  if (sum.ok) return { value: sum.value };
  return length === null && sum.reason === "length-unknown"
    ? { code: "missing" }
    : { code: "unit-not-convertible", values: { reason: sum.reason } };
}

/**
 * What a tally of salvage comes to, in the material's purchase unit.
 *     bought by measure (linear feet, board feet): sum over rows of pieces x length
 *     bought by the piece: sum over rows of pieces x (length / the material's own length, rounded down)
 * Units: purchase units. Rounds: the sum, once, half up to 6 places (a third of a board foot does not end). Faults, each
 * at its row (tally.2.length): missing, not-a-length and the other refusals of `lengthOf`, length-unit-missing for a bare
 * number, shorter-than-piece, unit-not-convertible. Source: board measure from nominal sizes (trade.md).
 */
export function tallySum(rows: readonly TallyRow[], material: Material): TallySum {
  const faults: Fault[] = [];
  let quantity = ZERO;
  for (const [index, row] of rows.entries()) {
    const sum = sumOfRow(material, row);
    if ("value" in sum) quantity = quantity.plus(sum.value);
    else faults.push({ path: `tally.${index}.length`, ...sum });
  }
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, quantity: roundHalfUp(quantity, 6), unit: material.purchaseUnit };
}

/** How many pieces a tally counts, whatever their lengths. Rounds: never. */
export function piecesOf(rows: readonly TallyRow[]): Decimal {
  return rows.reduce((total, { pieces }) => total.plus(pieces), decimal(0));
}
