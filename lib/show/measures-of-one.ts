import { type Decimal, ONE } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import { DIMENSION_NAMES, type DimensionName, type Material } from "../materials/material.ts";
import { measuresOf } from "../materials/measures.ts";
import type { UnitCode } from "../measure/units.ts";
import { figureText } from "./money-text.ts";
import { sizeText } from "./size-text.ts";

/** source: where the figure was read; null: nobody said. */
export type SizeRow = Readonly<{ name: DimensionName; text: string; unit: UnitCode; source: string | null }>;
export type MeasureRow = Readonly<{ unit: UnitCode; text: string; exact: string }>;

/** The sizes a material was given, in the order of a form. Rounds: to three places where it is no fraction of an inch. */
export function sizeRows(material: Material, locale: string): SizeRow[] {
  return DIMENSION_NAMES.flatMap((name) => {
    const size = material.dimensions[name];
    if (size === undefined) return [];
    const source = material.sources[name] ?? null;
    return [{ name, text: sizeText(size, locale), unit: size.unit, source }];
  });
}

/** Three places, or three figures of what is so small that three places would say too little of it: 0.00533 MBF. */
function places(value: Decimal): number {
  return Math.max(3, 2 - value.e);
}

/** What one purchase unit of a material is in each measure it is compared by. Rounds: to three places or figures, for reading. */
export function measuresOfOne(material: Material, locale: string): MeasureRow[] {
  const one = { value: ONE, unit: material.purchaseUnit };
  return measuresOf(material).flatMap((unit) => {
    const read = unit === material.purchaseUnit ? null : convertFor(material, one, unit);
    return read?.ok
      ? [{ unit, text: figureText(read.value, locale, 0, places(read.value)), exact: read.value.toFixed() }]
      : [];
  });
}
