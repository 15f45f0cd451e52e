import { type Decimal, ONE, ZERO } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";

/** So much of a material. quantity: its purchase units. */
export type Load = Readonly<{ material: Material; quantity: Decimal }>;

/** What so much of a material weighs, and where the figure was read; bySize: worked out from size and density. */
export type LoadPart = Readonly<{
  materialId: string;
  quantity: Decimal;
  kilograms: Decimal;
  bySize: boolean;
  source: string | null;
}>;

/** What a stack or a load weighs. unknown: materials nobody said the weight of: the load is heavier than `kilograms`. */
export type LoadWeight = Readonly<{
  kilograms: Decimal;
  parts: readonly LoadPart[];
  unknown: readonly string[];
}>;

/** What one purchase unit weighs, kilograms; null: neither its weight nor its density and size are known, never zero. */
export function weightOfOne(material: Material): Decimal | null {
  const weighed = convertFor(material, { value: ONE, unit: material.purchaseUnit }, "kilogram");
  return weighed.ok ? weighed.value : null;
}

/**
 * What a stack or a load weighs: quantity x weight of one, added up, each with its source.
 * Units: kilograms (a pound is 0.45359237). Rounds: only a division that does not end, to 40 digits. Wet or treated lumber
 * is heavier than what is printed. Source: trade.md, weights for vehicle payload; the material's own sources.
 */
export function loadWeight(loads: readonly Load[]): LoadWeight {
  const parts: LoadPart[] = [];
  const unknown = new Set<string>();
  for (const { material, quantity } of loads) {
    const each = weightOfOne(material);
    if (each === null) {
      if (!quantity.isZero()) unknown.add(material.id);
      continue;
    }
    const bySize = material.dimensions.weight === undefined;
    parts.push({
      materialId: material.id,
      quantity,
      kilograms: each.times(quantity),
      bySize,
      source: (bySize ? material.sources.density : material.sources.weight) ?? null,
    });
  }
  const kilograms = parts.reduce((total, part) => total.plus(part.kilograms), ZERO);
  return { kilograms, parts, unknown: [...unknown] };
}
