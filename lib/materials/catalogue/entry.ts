import { quantityOf } from "../../measure/quantity-text.ts";
import type { PurchaseUnit } from "../../measure/units.ts";
import { sourcesKept } from "../figures-kept.ts";
import type { Identity } from "../identity.ts";
import type { Category, DimensionName, Sources } from "../material.ts";
import { type MaterialEntry, materialEntry } from "../material-entry.ts";

/** Sizes as a person writes them: "7/16 in", "92-5/8 in", "80 lb". */
export type WrittenSizes = Readonly<Partial<Record<DimensionName, string>>>;

/**
 * A ready-made material to start from: no brand, no price. sources: where each figure was read; a size that only repeats
 * the name has none. words: what else people call it.
 */
export type CatalogueEntry = Readonly<{
  key: string;
  name: string;
  words?: string;
  category: Category;
  purchaseUnit: PurchaseUnit;
  sizes: WrittenSizes;
  identity?: Identity;
  shelfLifeDays?: number;
  sources?: Sources;
}>;

function sizeText(name: string, text: string): string {
  const size = quantityOf(text);
  if (size === null)
    throw new Error(`"${text}" is no size: write the ${name} of a catalogue entry as "7/16 in"`);
  return `${size.value.toFixed()} ${size.unit}`;
}

/**
 * The entry of a material as someone who picks it from the catalogue would make it.
 * Units: as written. Rounds: never. Throws: {Error} for a figure that is written wrong, {z.ZodError} for an entry the
 * material form would refuse: both mistakes of the catalogue, found by its test.
 */
export function entryOf(picked: CatalogueEntry): MaterialEntry {
  const { name, category, purchaseUnit, sizes, identity, shelfLifeDays = null, sources } = picked;
  const dimensions = Object.entries(sizes).map(([size, text]) => [size, sizeText(size, text)]);
  return materialEntry.parse({
    name,
    category,
    purchaseUnit,
    dimensions: Object.fromEntries(dimensions),
    identity,
    shelfLifeDays,
    sources,
  });
}

/**
 * What somebody made of a catalogue entry: the figures they left as they were keep where those were read, a figure put in
 * by hand has no source until they give one. Throws: as `entryOf`.
 */
export function startedFrom(picked: CatalogueEntry, entry: MaterialEntry): MaterialEntry {
  const before = entryOf(picked);
  return { ...entry, sources: { ...sourcesKept(before.sources, before, entry), ...entry.sources } };
}
