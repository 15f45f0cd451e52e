import type { Decimal } from "../decimal.ts";
import { inUnit } from "../measure/in-unit.ts";
import { type Load, loadWeight } from "../stock/load-weight.ts";
import { type CountText, countText } from "./count-text.ts";
import { figureText } from "./money-text.ts";

/** Where a weight was read, in whose words; null: nobody said. bySize: worked out from size and density. */
export type WeightPartText = Readonly<{
  materialId: string;
  quantity: CountText;
  kilograms: string;
  pounds: string;
  source: string | null;
  bySize: boolean;
}>;

/** What a stack or a load weighs, for reading. unknown: materials of no known weight: it is heavier than this. none: nothing is known. */
export type WeightText = Readonly<{
  kilograms: string;
  pounds: string;
  parts: readonly WeightPartText[];
  unknown: readonly string[];
  none: boolean;
}>;

function both(kilograms: Decimal, locale: string) {
  const pounds = inUnit({ value: kilograms, unit: "kilogram" }, "pound");
  return { kilograms: figureText(kilograms, locale, 0, 0), pounds: figureText(pounds, locale, 0, 0) };
}

/** The weight of so much material in kilograms and pounds, part by part with its source. Rounds: to whole ones, half up, for reading. */
export function weightText(loads: readonly Load[], locale: string): WeightText {
  const { kilograms, parts, unknown } = loadWeight(loads);
  return {
    ...both(kilograms, locale),
    parts: parts.map((part) => ({
      materialId: part.materialId,
      quantity: countText(part.quantity, locale),
      ...both(part.kilograms, locale),
      source: part.source,
      bySize: part.bySize,
    })),
    unknown,
    none: parts.length === 0,
  };
}
