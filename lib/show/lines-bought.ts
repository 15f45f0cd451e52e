import type { LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotState } from "../stock/lot-state.ts";
import { type KeyedLine, keyedLines } from "../takeoff/line-keys.ts";
import { purchaseOf } from "../takeoff/purchase.ts";
import type { TakeoffLine } from "../takeoff/result.ts";
import { quantityText } from "./money-text.ts";

/** A material a line can be bought as: how much before waste, and how much of it lies free in stock (null: none). */
export type BoughtAs = Readonly<{
  materialId: string;
  name: string;
  quantity: string;
  exact: string;
  unit: PurchaseUnit;
  free: string | null;
}>;
export type LineBought = Readonly<{ line: KeyedLine; as: readonly BoughtAs[] }>;

/** What is known of stock: all lots and what happened to them, on a day. */
export type Stock = Readonly<{ lots: readonly Lot[]; events: readonly StockEvent[]; day: LocalDate }>;

function freeOf(materialId: string, { lots, events, day }: Stock, locale: string): string | null {
  const free = lots
    .filter((lot) => lot.materialId === materialId)
    .reduce((sum, lot) => sum.plus(lotState(lot, events, day).free), ZERO);
  return free.isZero() ? null : quantityText(free, locale);
}

/**
 * Each line of a takeoff with the materials whose sizes fit it, before waste; nothing is taken off for free stock.
 * Units: purchase units. Rounds: for reading, half up to 0.001.
 */
export function linesBought(
  lines: readonly TakeoffLine[],
  materials: readonly Material[],
  stock: Stock,
  locale: string,
): LineBought[] {
  return keyedLines(lines).map((line) => ({
    line,
    as: materials.flatMap((material) => {
      const bought = purchaseOf(line, material);
      if (!bought.ok) return [];
      const { value } = bought.quantity;
      const free = freeOf(material.id, stock, locale);
      return [
        {
          materialId: material.id,
          name: material.name,
          quantity: quantityText(value, locale),
          exact: value.toFixed(),
          unit: material.purchaseUnit,
          free,
        },
      ];
    }),
  }));
}
