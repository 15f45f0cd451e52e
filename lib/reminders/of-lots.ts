import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { type ExposureFacts, materialOf } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import type { Lot } from "../stock/lot.ts";
import { lotState } from "../stock/lot-state.ts";
import { type Reminder, type ReminderKind, reminderOf } from "./reminder.ts";

type LastDay = Readonly<{ kind: ReminderKind; on: LocalDate; ahead: number; past: boolean }>;

/** The day the first of a lot came in, and the shelf life from then on; null: nothing came in, or no limit is known. */
function keepsUntil({ receipts }: Lot, { shelfLifeDays }: Material, day: LocalDate): LocalDate | null {
  const [first] = receipts
    .map(({ on }) => on)
    .filter((on) => on <= day)
    .sort();
  return first === undefined || shelfLifeDays === null ? null : plusDays(first, shelfLifeDays);
}

// A day to hand back or to ask by is of no use once it is past; what keeps no longer is still there.
function lastDays(lot: Lot, material: Material, day: LocalDate): LastDay[] {
  const { lotDayAhead: soon, shelfLifeAhead } = DAY_LIMITS;
  const { returnableUntil, adjustableUntil } = lot.agreed;
  const keeps = keepsUntil(lot, material, day);
  return [
    ...(returnableUntil === null
      ? []
      : [{ kind: "return-by", on: returnableUntil, ahead: soon, past: false } as const]),
    ...(adjustableUntil === null
      ? []
      : [{ kind: "adjust-by", on: adjustableUntil, ahead: soon, past: false } as const]),
    ...(keeps === null
      ? []
      : [{ kind: "keeps-until", on: keeps, ahead: shelfLifeAhead, past: true } as const]),
  ];
}

/**
 * Lots of which something is on hand and whose last day for a return or a price adjustment, or whose shelf life's end, nears
 * (the last day counts); what keeps no longer stays until it is gone. Units: calendar days; on hand in purchase units.
 *     on hand = received + found - gone;  keeps until = the day it first came in + the material's shelf life
 * Source: rules.md R9.
 */
export function lotsWithALastDay(day: LocalDate, facts: ExposureFacts): Reminder[] {
  return facts.lots.flatMap((lot) => {
    if (lot.orderedOn > day) return [];
    const material = materialOf(facts, lot.materialId);
    const near = lastDays(lot, material, day).filter(({ on, ahead, past }) => {
      const left = daysBetween(day, on);
      return left <= ahead && (past || left >= 0);
    });
    if (near.length === 0) return [];
    const quantity: Decimal = onHand(lot, facts, day);
    if (!quantity.greaterThan(0)) return [];
    const { id: lotId, storeId, materialId } = lot;
    const said = { lotId, storeId, materialId, unit: material.purchaseUnit, quantity };
    return near.map(({ kind, on }) => reminderOf([lotId], { kind, on, ...said }));
  });
}

function onHand(lot: Lot, { events }: ExposureFacts, day: LocalDate): Decimal {
  const { received, found, gone } = lotState(lot, events, day);
  return received.plus(found).minus(gone);
}
