import * as z from "zod";
import type { Decimal } from "../decimal.ts";
import { day, fields, id, listOf, percent } from "../entry-fields.ts";
import type { Fault } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type KeyedLine, keyedLines } from "../takeoff/line-keys.ts";
import { asRequirement, purchaseOf } from "../takeoff/purchase.ts";
import type { TakeoffLine } from "../takeoff/result.ts";

const MOST_LINES = 200;

/** line: its key; id: of the requirement it becomes; materialId null: the line is not bought. */
const need = fields({
  line: z.string({ error: "missing" }),
  id: id(),
  materialId: id().nullable().default(null),
  wastePercent: percent().prefault("0"),
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

function faultOf({ at, line, material }: Chosen): Fault | null {
  const path = `needs.${at}.materialId`;
  if (line === undefined || material === undefined) return { path, code: "not-there" };
  const bought = purchaseOf(line, material);
  return bought.ok ? null : { path, code: "unit-not-convertible", values: { reason: bought.reason } };
}

function needOf({ need: chosen, line, material }: Chosen): NeedOfLine[] {
  if (line === undefined || material === undefined) return [];
  const bought = purchaseOf(line, material);
  if (!bought.ok) return [];
  const { value } = asRequirement(bought.quantity);
  return [{ need: chosen, materialId: material.id, quantity: { value, unit: material.purchaseUnit } }];
}

/**
 * What the chosen lines come to, each in its material's purchase unit.
 *     quantity of a line: purchaseOf, before waste;   lines without a material are left out
 * Units: purchase units. Rounds: as a requirement keeps it, half up to 6 places. Faults: not-there,
 * unit-not-convertible (needs.N.materialId), missing (needs) where nothing is chosen.
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
