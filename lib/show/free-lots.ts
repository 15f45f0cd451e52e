import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotState } from "../stock/lot-state.ts";
import { isUsed } from "../stock/salvage.ts";
import { quantityText } from "./money-text.ts";

/** A lot with some of it free, as text. Quantities in its material's purchase units. */
export type FreeLot = Readonly<{
  lotId: string;
  materialId: string;
  free: string;
  freeExact: string;
  orderedOn: LocalDate;
  storedAt: string | null;
  origin: Lot["origin"];
  /** Salvaged, or bought used: only for a need that accepts it. */
  used: boolean;
}>;

/** Lots with free stock on a day, the oldest first: what was bought first is used first. Rounds: for reading. */
export function freeLots(
  lots: readonly Lot[],
  events: readonly StockEvent[],
  day: LocalDate,
  locale: string,
): FreeLot[] {
  return lots
    .map((lot) => ({ lot, free: lotState(lot, events, day).free }))
    .filter(({ free }) => !free.isZero())
    .map(({ lot, free }) => ({
      lotId: lot.id,
      materialId: lot.materialId,
      free: quantityText(free, locale),
      freeExact: free.toFixed(),
      orderedOn: lot.orderedOn,
      storedAt: lot.storedAt,
      origin: lot.origin,
      used: isUsed(lot),
    }))
    .sort((a, b) => a.orderedOn.localeCompare(b.orderedOn));
}

/** The smaller of what is free and what is open, as canonical decimal text: a quantity to begin a form with. */
export function smaller(a: Decimal, b: Decimal): string {
  return (a.lessThan(b) ? a : b).toFixed();
}
