import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Category, Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type LastChange, lastChange } from "../prices/last-change.ts";
import type { Observation, Terms } from "../prices/observation.ts";
import { recheckDays } from "../prices/seen-day.ts";
import { priceSeries } from "../prices/series.ts";
import type { Valuation } from "../prices/valuation.ts";
import { unitPriceText } from "./money-text.ts";
import { percentText } from "./percent-text.ts";
import { type Sparkline, sparkline } from "./sparkline.ts";

/** A change since the price before: the direction of a triangle and the percentage without its sign. */
export type ChangeText = Readonly<{ direction: "up" | "down" | "level"; percent: string }>;

/** A material in the list. `last` null: no price yet, or none that can be valued. */
export type MaterialRow = Readonly<{
  id: string;
  name: string;
  category: Category;
  unit: PurchaseUnit;
  last: Readonly<{
    price: string;
    storeName: string;
    terms: Terms;
    ageDays: number;
    stale: boolean;
    change: ChangeText | null;
    spark: Sparkline | null;
  }> | null;
}>;

export const SPARK = { width: 96, height: 28 } as const;

/** Rounds: the percentage to 0.1, half up, for reading. */
export function changeText({ percent }: Pick<LastChange, "percent">, locale: string): ChangeText | null {
  if (percent === null) return null;
  const direction = percent.isZero() ? "level" : percent.isNegative() ? "down" : "up";
  return { direction, percent: percentText(percent.abs(), locale, { places: 1 }) };
}

/** Sightings like the last one (its store and terms), for a line that moves only when like is compared with like. */
function alike(
  last: LastChange,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
) {
  const same = observations.filter((seen) => seen.storeId === last.storeId && seen.terms === last.terms);
  const unit = material.purchaseUnit;
  return priceSeries(same, material, valuation, { from: null, until: null, unit, currency: "home" }).flatMap(
    (point) => (point.known ? [{ on: point.seenOn, value: point.price.amount }] : []),
  );
}

/**
 * A material with its last price, all in, valued on the day it was seen (R2), what changed since the price before at that
 * store, and a small line of that store's prices. observations: of this material only; the recent ones are enough.
 * Rounds: for reading only.
 */
export function materialRow(
  day: LocalDate,
  material: Material,
  observations: readonly Observation[],
  valuation: Valuation,
  locale: string,
): MaterialRow {
  const { id, name, category, purchaseUnit } = material;
  const last = lastChange(day, observations, material, valuation);
  if (last === null) return { id, name, category, unit: purchaseUnit, last: null };
  const ageDays = daysBetween(last.seenOn, day);
  return {
    id,
    name,
    category,
    unit: purchaseUnit,
    last: {
      price: unitPriceText(last.price, locale),
      storeName: valuation.stores.get(last.storeId)?.name ?? "",
      terms: last.terms,
      ageDays,
      stale: ageDays > recheckDays(material, valuation),
      change: changeText(last, locale),
      spark: sparkline(alike(last, observations, material, valuation), SPARK.width, SPARK.height),
    },
  };
}

/** The rows of several materials, in their order. observations: the recent ones of all of them. Rounds: for reading only. */
export function materialRows(
  day: LocalDate,
  materials: readonly Material[],
  observations: readonly Observation[],
  valuation: Valuation,
  locale: string,
): MaterialRow[] {
  const seen = groupedBy(observations, ({ materialId }) => materialId);
  return materials.map((material) =>
    materialRow(day, material, seen.get(material.id) ?? [], valuation, locale),
  );
}
