import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { inUnit } from "../measure/in-unit.ts";
import type { Quantity, UnitCode } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";

/** Waste as a site sorts it. "hazardous" goes through licensed disposal and is only paid for here. */
export const WASTE_KINDS = [
  "clean-wood",
  "painted-or-treated-wood",
  "drywall",
  "masonry-and-concrete",
  "metal",
  "roofing",
  "mixed",
  "hazardous",
] as const;
export type WasteKind = (typeof WASTE_KINDS)[number];

/** Units a load is weighed in. */
export const WEIGHT_UNITS = ["kilogram", "tonne", "pound"] as const satisfies readonly UnitCode[];

export const DISPOSAL_FEE_BASES = ["tonne", "load", "flat"] as const;
export type DisposalFeeBasis = (typeof DISPOSAL_FEE_BASES)[number];

/**
 * One lot of waste gotten rid of, paid by a project. fee: per tonne, per load or for all of it; least: the least that is
 * charged where the fee is per tonne; loads: how many, of a fee per load. taxIncluded, taxRegion: as at a store; region null:
 * no tax was charged. hauling: taking it there, as paid. weight: as weighed; else materialId and quantity (purchase units) say it.
 */
export type Disposal = Readonly<{
  id: string;
  projectId: string;
  kind: WasteKind;
  on: LocalDate;
  feeBasis: DisposalFeeBasis;
  fee: Decimal;
  least: Decimal | null;
  loads: Decimal | null;
  hauling: Decimal;
  currency: CurrencyCode;
  taxIncluded: boolean;
  taxRegion: string | null;
  weight: Quantity | null;
  materialId: string | null;
  quantity: Decimal | null;
  note: string | null;
}>;

/** What a load of waste weighs and where that is from: a scale, or the material's figures (its source); null: not known. */
export type WasteWeight = Readonly<{
  kilograms: Decimal;
  from: "weighed" | "material";
  source: string | null;
}>;

/**
 * What waste weighs: as weighed, else quantity x weight of one of the material; null where neither is known, never zero.
 * Units: kilograms. Rounds: only a division that does not end. Source: as named in the answer.
 */
export function wasteWeight(
  { weight, quantity }: Pick<Disposal, "weight" | "quantity">,
  material: Material | null,
): WasteWeight | null {
  if (weight !== null) return { kilograms: inUnit(weight, "kilogram"), from: "weighed", source: null };
  if (material === null || quantity === null) return null;
  const read = convertFor(material, { value: quantity, unit: material.purchaseUnit }, "kilogram");
  if (!read.ok) return null;
  const { weight: own, density } = material.sources;
  const source = (material.dimensions.weight === undefined ? density : own) ?? null;
  return { kilograms: read.value, from: "material", source };
}
