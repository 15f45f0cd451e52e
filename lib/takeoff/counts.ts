import type * as z from "zod";
import type { Decimal } from "../decimal.ts";
import { fields, listOf, name, withRules } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, rectangle, view } from "./drawing.ts";
import { count } from "./fields.ts";
import { measure, sumOf, type TakeoffLine, type TakeoffResult } from "./result.ts";

const MOST_ITEMS = 100;
const MOST_DRAWN = 120;
/** Unit squares stand for things that were counted, not measured: so far apart, so many in a row. */
const STEP = 2;
const ROW = 12;

/** Doors, windows and what each takes: hinges, locks, screws. */
function inputs(_system: UnitSystem) {
  const part = fields({ name: name(), perItem: count() });
  const item = fields({ name: name(), count: count(), parts: listOf(part, 20).default([]) });
  const entry = fields({ items: listOf(item, MOST_ITEMS) });
  return withRules(entry, [
    { path: "items", code: "missing", broken: ({ items }) => Array.isArray(items) && items.length === 0 },
  ]);
}
type Inputs = z.output<ReturnType<typeof inputs>>;
type Counted = Readonly<{ label: string; each: Decimal; formula: string }>;

function countedIn(given: Inputs): Counted[] {
  return given.items.flatMap((item) => [
    { label: item.name, each: item.count, formula: "sum(count)" },
    ...item.parts.map((part) => ({
      label: part.name,
      each: part.perItem.times(item.count),
      formula: "sum(count × perItem)",
    })),
  ]);
}

/**
 * Things counted, and what belongs to each; those of one name together, whatever their capitals.
 *     item: count;   part: sum of count x per item
 * Units: each. Rounds: never.
 */
function results(given: Inputs): TakeoffResult {
  const byName = new Map<string, Counted[]>();
  for (const counted of countedIn(given)) {
    const key = counted.label.toLowerCase();
    byName.set(key, [...(byName.get(key) ?? []), counted]);
  }
  const lines = [...byName.values()].flatMap((same): TakeoffLine[] => {
    const [first] = same;
    if (first === undefined) return [];
    const value = sumOf(same.map(({ each }) => each));
    const { label, formula } = first;
    return [{ name: "counted", label, quantity: { value, unit: "each" }, cut: null, formula }];
  });
  const items = sumOf(given.items.map((item) => item.count));
  return { measures: [measure("items", { value: items, unit: "each" }, "sum(count)")], lines };
}

/** A square for each item, named as the item, in rows. Units: none that mean anything. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const each = given.items.flatMap((item) =>
    Array.from({ length: Math.min(MOST_DRAWN, item.count.toNumber()) }, () => item.name),
  );
  const squares = each
    .slice(0, MOST_DRAWN)
    .map((label, index) => rectangle(label, [(index % ROW) * STEP, Math.floor(index / ROW) * STEP], 1, 1));
  return { unit: UNITS_OF[system].length, views: [view("parts", { polygons: squares })] };
}

export const counts: Calculator<Inputs> = { inputs, results, drawing };
