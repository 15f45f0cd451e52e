import type * as z from "zod";
import { type Decimal, ZERO } from "../decimal.ts";
import { fields, listOf } from "../entry-fields.ts";
import type { Fault } from "../fault.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import type { Point, Polygon } from "./drawing.ts";
import { rectangle } from "./drawing.ts";
import { count, faultIf, length } from "./fields.ts";
import { sumOf } from "./result.ts";

const MOST_OPENINGS = 50;
/** Openings beyond these are not drawn one by one. */
const MOST_DRAWN = 60;

/** Doors, windows, stair wells: width, height and how many alike. */
export function openings(system: UnitSystem) {
  const opening = fields({ width: length(system), height: length(system), count: count().prefault("1") });
  return listOf(opening, MOST_OPENINGS).default([]);
}
export type Opening = z.output<ReturnType<typeof openings>>[number];

/** The area of some openings together. Units: square inches or millimetres. Rounds: never. */
export function openingArea(some: readonly Opening[]): Decimal {
  return sumOf(some.map((one) => one.width.times(one.height).times(one.count)));
}

/** Those of an area of at least `least`; smaller ones are worked over, not taken off. Units: square inches or millimetres. */
export function notSmaller(some: readonly Opening[], least: Decimal): Opening[] {
  return some.filter((one) => one.width.times(one.height).greaterThanOrEqualTo(least));
}

/** Openings that do not fit a rectangle: each by its own side, all together by their area. */
export function openingFaults(
  some: readonly Opening[],
  [width, height]: readonly [Decimal, Decimal],
  path: string,
): Fault[] {
  const alone = some.flatMap((one, index) => [
    ...faultIf(one.width.greaterThan(width), `${path}.${index}.width`, "larger-than-wall"),
    ...faultIf(one.height.greaterThan(height), `${path}.${index}.height`, "larger-than-wall"),
  ]);
  if (alone.length > 0) return alone;
  return faultIf(openingArea(some).greaterThan(width.times(height)), path, "larger-than-wall");
}

/** Openings side by side along a rectangle, evenly: where they are was not asked. Units: the drawing's. */
export function drawnOpenings(some: readonly Opening[], [x, y]: Point, width: number): Polygon[] {
  if (sumOf(some.map((one) => one.count)).greaterThan(MOST_DRAWN)) return [];
  const each = some.flatMap((one) => Array.from({ length: one.count.toNumber() }, () => one));
  const taken = each.reduce((sum, one) => sum.plus(one.width), ZERO).toNumber();
  const gap = Math.max(0, width - taken) / (each.length + 1);
  const fit = Math.min(1, width / (taken || 1));
  let at = x + gap;
  return each.map((one) => {
    const drawn = rectangle("opening", [at, y], one.width.toNumber() * fit, one.height.toNumber());
    at += one.width.toNumber() * fit + gap;
    return drawn;
  });
}
