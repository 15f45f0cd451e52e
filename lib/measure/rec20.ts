import { type Decimal, decimal, ONE } from "../decimal.ts";
import { type Quantity, UNITS, type UnitCode } from "./units.ts";

/**
 * A quantity in a live code. isPacked: counted as articles because the code of the pack was deleted; how many pieces one
 * holds goes beside it, from the material.
 */
export type Rec20Quantity = Readonly<{ code: string; value: Decimal; isPacked: boolean }>;

type Stated = Readonly<{ code: string; per: Decimal; isPacked: boolean }>;

/** Codes a unit without one of its own is stated in: so many of them are one of it. */
const STATED: Readonly<Partial<Record<UnitCode, Stated>>> = {
  sheet: { code: "EA", per: ONE, isPacked: false },
  bundle: { code: "EA", per: ONE, isPacked: true },
  roll: { code: "EA", per: ONE, isPacked: true },
  bag: { code: "EA", per: ONE, isPacked: true },
  box: { code: "EA", per: ONE, isPacked: true },
  msf: { code: "FTK", per: decimal(1000), isPacked: false },
};

/**
 * A quantity as a program that reads UN/CEFACT Recommendation 20 is told it, or null where no live code says it.
 *     value x how many of the code one of our unit is (a thousand square feet are 1,000 FTK)
 * A sheet, bundle, roll, bag or box has only a deleted code: it goes as EA. The 3/8 in basis is no plain volume and a
 * density is no quantity: null. Rounds: never. Source: Recommendation 20, revision 17e (2021), status column.
 */
export function inRec20({ value, unit }: Quantity): Rec20Quantity | null {
  const own = UNITS[unit].rec20;
  if (own !== null) return { code: own, value, isPacked: false };
  const stated = STATED[unit];
  return stated === undefined
    ? null
    : { code: stated.code, value: value.times(stated.per), isPacked: stated.isPacked };
}

const BY_CODE: ReadonlyMap<string, UnitCode> = new Map(
  Object.entries(UNITS).flatMap(([unit, { rec20 }]) => (rec20 === null ? [] : [[rec20, unit as UnitCode]])),
);

/**
 * Our unit of a live code, capitals and blanks aside; null for a code that was deleted, deprecated, or is none of ours (a
 * foot as FOT is a length of one thing, LF a running foot that is sold). Source: as `inRec20`.
 */
export function unitOfRec20(code: string): UnitCode | null {
  return BY_CODE.get(code.trim().toUpperCase()) ?? null;
}
