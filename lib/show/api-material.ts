import * as z from "zod";
import { ONE } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { inRec20 } from "../measure/rec20.ts";
import type { Quantity } from "../measure/units.ts";
import { dayShape, exactDigits } from "./api-fields.ts";

export const materialShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  category: z.string(),
  purchaseUnit: z.string(),
  purchaseUnitRec20: z
    .strictObject({ code: z.string(), value: z.string(), isPacked: z.boolean() })
    .nullable()
    .describe(
      "so many of a live UN/CEFACT Recommendation 20 code are one purchase unit; null where none says it",
    ),
  dimensions: z.record(z.string(), z.string()).describe('each as "value unit"'),
  identity: z.record(z.string(), z.string()).describe("grade, hand, doorKind, treatment, where known"),
  shelfLifeDays: z.int().nullable(),
  sources: z.record(z.string(), z.string()).describe("where each figure was read"),
  recheckDays: z.int().nullable(),
  exemptFrom: z.array(z.string()),
  note: z.string().nullable(),
  archivedOn: dayShape.nullable(),
});

function sizeText({ value, unit }: Quantity): string {
  return `${exactDigits(value)} ${unit}`;
}

/** A material as it is kept. */
export function apiMaterial(material: Material): z.output<typeof materialShape> {
  const { id, name, category, purchaseUnit, shelfLifeDays, recheckDays, exemptFrom, note, archivedOn } =
    material;
  const coded = inRec20({ value: ONE, unit: purchaseUnit });
  const sizes = Object.entries(material.dimensions).map(([called, size]) => [called, sizeText(size)]);
  return {
    id,
    name,
    category,
    purchaseUnit,
    purchaseUnitRec20: coded && { ...coded, value: exactDigits(coded.value) },
    dimensions: Object.fromEntries(sizes),
    identity: { ...material.identity },
    shelfLifeDays,
    sources: { ...material.sources },
    recheckDays,
    exemptFrom: [...exemptFrom],
    note,
    archivedOn,
  };
}
