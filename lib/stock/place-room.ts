import { Decimal, ZERO } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { inUnit } from "../measure/in-unit.ts";
import type { Load } from "./load-weight.ts";
import { type Place, SPACE_MEASURES, type SpaceMeasure } from "./place.ts";
import { footprint, inOneStack, SPACE_UNITS, spaceOf, spaceOfOne } from "./space-of.ts";

/**
 * How full a place is by one measure. limit: null when the place says none. unknown: materials lying there whose size is not
 * known; `used` is then "at least". free: limit - used, below zero when it is overfull; null without a limit.
 */
export type Room = Readonly<{
  measure: SpaceMeasure;
  limit: Decimal | null;
  used: Decimal;
  free: Decimal | null;
  unknown: readonly string[];
}>;

/** A place's limit in square metres, cubic metres, kilograms or pieces; null: none said. */
export function limitOf(place: Place, measure: SpaceMeasure): Decimal | null {
  if (measure === "count") return place.count;
  const limit = place[measure];
  return limit === null ? null : inUnit(limit, SPACE_UNITS[measure]);
}

/** Lots of one material share their stacks. */
export function byMaterial(loads: readonly Load[]): Load[] {
  const together = new Map<string, Load>();
  for (const { material, quantity } of loads) {
    const before = together.get(material.id)?.quantity ?? ZERO;
    together.set(material.id, { material, quantity: before.plus(quantity) });
  }
  return [...together.values()];
}

/**
 * How full a place is by each measure, from what lies there (`spaceOf`). Units: square metres, cubic metres, kilograms, pieces.
 * Rounds: stacks up. A material of unknown size is named and adds nothing: never taken for zero.
 */
export function roomOf(place: Place, loads: readonly Load[]): Room[] {
  const lying = byMaterial(loads).filter(({ quantity }) => quantity.greaterThan(0));
  return SPACE_MEASURES.map((measure) => {
    const unknown: string[] = [];
    let used = ZERO;
    for (const { material, quantity } of lying) {
      const space = spaceOf(material, quantity, measure);
      if (space === null) unknown.push(material.id);
      else used = used.plus(space);
    }
    const limit = limitOf(place, measure);
    return { measure, limit, used, free: limit?.minus(used) ?? null, unknown };
  });
}

/**
 * How many more of a material go into a place. quantity: null when no limit that can be reckoned binds. by: the measure that
 * binds. atMost: something lies there whose size is not known, so there may be less room. unknown: limits of the place that this
 * material's own size is not known for.
 */
export type Fits = Readonly<{
  quantity: Decimal | null;
  by: SpaceMeasure | null;
  atMost: boolean;
  unknown: readonly SpaceMeasure[];
}>;

/** Of a panel by floor: what its started stack still takes, and whole stacks beside it; null: one stack of any height. */
function fitsByArea(material: Material, free: Decimal, lying: Decimal): Decimal | null | "unknown" {
  const floor = footprint(material);
  if (floor === null) return "unknown";
  const stack = inOneStack(material);
  if (stack === null) return lying.isZero() && free.lessThan(floor) ? ZERO : null;
  const started = lying.modulo(stack);
  const toFull = started.isZero() ? ZERO : stack.minus(started);
  return toFull.plus(Decimal.max(ZERO, free.dividedBy(floor)).floor().times(stack));
}

/**
 * How many more of a material fit in a place beside what lies there.
 *     least over the place's limits of free / what one takes, rounded down to whole purchase units (by area: whole stacks)
 * Units: purchase units. Rounds: down, once per limit. An overfull place takes none. Source: `spaceOf`.
 */
export function fitsIn(place: Place, loads: readonly Load[], material: Material): Fits {
  const lying = byMaterial(loads).find((load) => load.material.id === material.id)?.quantity ?? ZERO;
  const step = purchaseStep(material.purchaseUnit);
  const unknown: SpaceMeasure[] = [];
  let least: { quantity: Decimal; by: SpaceMeasure } | null = null;
  let atMost = false;
  for (const { measure, free, unknown: others } of roomOf(place, loads)) {
    if (free === null) continue;
    if (others.some((id) => id !== material.id)) atMost = true;
    const fits =
      measure === "area" ? fitsByArea(material, free, lying) : byEach(material, measure, free, step);
    if (fits === "unknown") unknown.push(measure);
    else if (fits !== null && (least === null || fits.lessThan(least.quantity)))
      least = { quantity: fits, by: measure };
  }
  return { quantity: least?.quantity ?? null, by: least?.by ?? null, atMost, unknown };
}

function byEach(
  material: Material,
  measure: Exclude<SpaceMeasure, "area">,
  free: Decimal,
  step: Decimal,
): Decimal | "unknown" {
  const one = spaceOfOne(material, measure);
  if (one === null || one.isZero()) return "unknown";
  const steps = Decimal.max(ZERO, free).dividedBy(one.times(step)).floor();
  return steps.times(step);
}
