import * as z from "zod";
import type { Decimal } from "../decimal.ts";
import { day, fields, id, listOf, percent } from "../entry-fields.ts";
import type { Fault } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type KeyedLine, keyedLines } from "../takeoff/line-keys.ts";
import { asRequirement, lacksYield, type Purchase, purchaseOf, purchaseTyped } from "../takeoff/purchase.ts";
import type { TakeoffLine } from "../takeoff/result.ts";
import { typedYield } from "../takeoff/yield.ts";

const MOST_LINES = 200;

/**
 * line: its key; id: of the requirement it becomes; materialId null: the line is not bought; holds: what one purchase unit
 * gives, where the material's own sizes do not say.
 */
const need = fields({
  line: z.string({ error: "missing" }),
  id: id(),
  materialId: id().nullable().default(null),
  wastePercent: percent().prefault("0"),
  holds: typedYield().optional(),
});

/** A takeoff to keep, and what of it becomes requirements, all by one day. takeoff: see `takeoffEntry`. */
export const takeoffNeedsEntry = fields({
  takeoff: z.unknown(),
  neededBy: day(),
  needs: listOf(need, MOST_LINES),
});
export type TakeoffNeedsEntry = z.output<typeof takeoffNeedsEntry>;

/** One line on its way to a requirement: quantity in purchase units of its material, before waste. */
export type NeedOfLine = Readonly<{ need: z.output<typeof need>; materialId: string; quantity: Bought }>;
type Bought = Readonly<{ value: Decimal; unit: PurchaseUnit }>;
export type NeedsOfLines = Readonly<{ needs: readonly NeedOfLine[]; faults: readonly Fault[] }>;

type Chosen = Readonly<{
  at: number;
  need: z.output<typeof need>;
  line: KeyedLine | undefined;
  material: Material | undefined;
}>;

function purchase({ need, line, material }: Omit<Chosen, "at">): Purchase | null {
  if (line === undefined || material === undefined) return null;
  return purchaseTyped(line, material, need.holds ?? null);
}

function faultOf({ at, need, line, material }: Chosen): Fault | null {
  const path = `needs.${at}.materialId`;
  if (line === undefined || material === undefined) return { path, code: "not-there" };
  const { holds } = need;
  const held = `needs.${at}.holds`;
  if (holds !== undefined && purchaseOf(line, material).ok) return { path: held, code: "yield-known" };
  if (holds === undefined && lacksYield(line, material)) return { path: held, code: "missing" };
  const bought = purchase({ need, line, material });
  if (bought === null || bought.ok) return null;
  const values = { reason: bought.reason };
  return { path: holds === undefined ? path : held, code: "unit-not-convertible", values };
}

function needOf({ need: chosen, line, material }: Chosen): NeedOfLine[] {
  const bought = purchase({ need: chosen, line, material });
  if (material === undefined || bought === null || !bought.ok) return [];
  const { value } = asRequirement(bought.quantity);
  return [{ need: chosen, materialId: material.id, quantity: { value, unit: material.purchaseUnit } }];
}

/**
 * What the chosen lines come to, each in its material's purchase unit.
 *     quantity of a line: purchaseTyped, before waste;   lines without a material are left out
 * Units: purchase units. Rounds: as a requirement keeps it, half up to 6 places. Faults: not-there,
 * unit-not-convertible (needs.N.materialId, or needs.N.holds for a yield of another measure), missing or yield-known
 * (needs.N.holds), missing (needs) where nothing is chosen.
 */
export function needsOfLines(
  needs: TakeoffNeedsEntry["needs"],
  lines: readonly TakeoffLine[],
  materials: ReadonlyMap<string, Material>,
): NeedsOfLines {
  const byKey = new Map(keyedLines(lines).map((line) => [line.key, line]));
  const chosen = needs.flatMap((one, at): Chosen[] =>
    one.materialId === null
      ? []
      : [{ at, need: one, line: byKey.get(one.line), material: materials.get(one.materialId) }],
  );
  if (chosen.length === 0) return { needs: [], faults: [{ path: "needs", code: "missing" }] };
  const faults = chosen.map(faultOf).filter((fault) => fault !== null);
  return { faults, needs: chosen.flatMap(needOf) };
}
