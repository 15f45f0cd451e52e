import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import type { Lot } from "../stock/lot.ts";

/** Days ahead in which a day to act by is called near. Judgement. */
export const NEAR_DAYS = 30;

/** A day to act by. left: days until it, below zero when it is past. near: within `NEAR_DAYS`, or past. */
export type DayAhead = Readonly<{ on: LocalDate; left: number; near: boolean }>;

/** The days of a lot that press: until when it keeps, is taken back, a lower price is paid back, and when what is ordered comes. null: not said. */
export type LotDays = Readonly<{
  keeps: DayAhead | null;
  returnable: DayAhead | null;
  adjustable: DayAhead | null;
  expected: DayAhead | null;
}>;

function ahead(on: LocalDate | null, day: LocalDate): DayAhead | null {
  if (on === null) return null;
  const left = daysBetween(day, on);
  return { on, left, near: left <= NEAR_DAYS };
}

/**
 * The days of a lot seen from a day.
 *     keeps until = the day it first came in + the material's shelf life
 * The day it was made is not known: what lay long in the store keeps for less. awaited: something of it is still to come. Units:
 * calendar days. Source: product.md (shelf-life dates), rules.md R9.
 */
export function lotDays(lot: Lot, material: Material, day: LocalDate, awaited: boolean): LotDays {
  const [first] = lot.receipts.map(({ on }) => on).sort();
  const { shelfLifeDays } = material;
  const keeps = first === undefined || shelfLifeDays === null ? null : plusDays(first, shelfLifeDays);
  return {
    keeps: ahead(keeps, day),
    returnable: ahead(lot.agreed.returnableUntil, day),
    adjustable: ahead(lot.agreed.adjustableUntil, day),
    expected: awaited ? ahead(lot.agreed.expectedOn, day) : null,
  };
}
