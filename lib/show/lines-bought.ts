import type { LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import type { Category, Material } from "../materials/material.ts";
import type { PurchaseUnit, Quantity } from "../measure/units.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotState } from "../stock/lot-state.ts";
import { isUsualFor } from "../takeoff/line-categories.ts";
import { type KeyedLine, keyedLines } from "../takeoff/line-keys.ts";
import { lacksYield, purchaseTyped } from "../takeoff/purchase.ts";
import type { TakeoffLine } from "../takeoff/result.ts";
import { quantityText } from "./money-text.ts";

/**
 * A material a line can be bought as: how much before waste (null: once it is typed what one gives), and how much of it
 * lies free in stock (null: none). asksYield: its own sizes do not say what one gives.
 */
export type BoughtAs = Readonly<{
  materialId: string;
  name: string;
  quantity: string | null;
  exact: string;
  unit: PurchaseUnit;
  asksYield: boolean;
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

/** What was typed that one gives, by the key of the line. */
type Yields = ReadonlyMap<string, Quantity>;

/** As little as a line and a material say: null where it cannot be bought as that. */
function bought(line: KeyedLine, material: Material, yields: Yields, locale: string) {
  const asksYield = lacksYield(line, material);
  if (asksYield && !isUsualFor(line.name, material.category)) return null;
  const read = purchaseTyped(line, material, yields.get(line.key) ?? null);
  if (!read.ok) return asksYield ? { quantity: null, exact: "0", asksYield } : null;
  const { value } = read.quantity;
  return { quantity: quantityText(value, locale), exact: value.toFixed(), asksYield };
}

/** What it is usually bought as first, and of those what needs nothing typed. */
function standing(line: KeyedLine, category: Category, asksYield: boolean): number {
  return (isUsualFor(line.name, category) ? 0 : 2) + (asksYield ? 1 : 0);
}

/**
 * Each line of a takeoff with the materials whose sizes fit it, and those that fit once it is typed what one gives, what
 * is usual first; before waste; nothing is taken off for free stock. yields: what was typed, by the line's key.
 * Units: purchase units. Rounds: for reading, half up to 0.001.
 */
export function linesBought(
  lines: readonly TakeoffLine[],
  materials: readonly Material[],
  { yields, ...stock }: Stock & Readonly<{ yields: Yields }>,
  locale: string,
): LineBought[] {
  return keyedLines(lines).map((line) => {
    const found = materials.flatMap((material) => {
      const as = bought(line, material, yields, locale);
      if (as === null) return [];
      const { id: materialId, name, purchaseUnit: unit, category } = material;
      const free = freeOf(materialId, stock, locale);
      return [{ at: standing(line, category, as.asksYield), as: { ...as, materialId, name, unit, free } }];
    });
    return { line, as: found.sort((a, b) => a.at - b.at).map(({ as }) => as) };
  });
}
