import type { DimensionName, Dimensions, Material } from "../../lib/materials/material.ts";
import { quantityOf } from "../../lib/measure/quantity-text.ts";

/** Dimensions from text as a person writes it: { length: "8 ft" }. Throws: {Error} for text that is no quantity. */
export function dimensions(written: Partial<Record<DimensionName, string>>): Dimensions {
  const read = Object.entries(written).map(([name, text]) => {
    const quantity = quantityOf(text);
    if (quantity === null) throw new Error(`"${text}" is no quantity`);
    return [name, quantity];
  });
  return Object.fromEntries(read);
}

/** A material with only what a test cares about. */
export function someMaterial(
  purchaseUnit: Material["purchaseUnit"],
  written: Partial<Record<DimensionName, string>> = {},
  rest: Partial<Material> = {},
): Material {
  return {
    id: "00000000-0000-4000-8000-000000000001",
    name: "a material",
    category: "other",
    purchaseUnit,
    dimensions: dimensions(written),
    identity: {},
    shelfLifeDays: null,
    sources: {},
    recheckDays: null,
    exemptFrom: [],
    note: null,
    archivedOn: null,
    ...rest,
  };
}

/** A piece of lumber by its nominal size in inches, its actual size and its length. */
export function lumber(nominal: string, length?: string, actual?: readonly [string, string]): Material {
  const [nominalThickness, nominalWidth] = nominal.split("x").map((inches) => `${inches} in`);
  return someMaterial(
    "piece",
    {
      nominalThickness,
      nominalWidth,
      ...(length === undefined ? {} : { length }),
      ...(actual === undefined ? {} : { thickness: actual[0], width: actual[1] }),
    },
    { category: "dimensional-lumber" },
  );
}
