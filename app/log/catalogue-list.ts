import { CATALOGUE } from "../../lib/materials/catalogue/catalogue.ts";
import { entryOf } from "../../lib/materials/catalogue/entry.ts";
import type { SnapshotMaterial } from "../../lib/show/aisle-snapshot.ts";
import { hasEveryWord } from "../../lib/show/every-word.ts";

/** A catalogue entry as the form shows it before the server has made a material of it. */
export type Listed = Readonly<{
  key: string;
  plain: Pick<SnapshotMaterial, "name" | "category" | "unit" | "dimensions">;
}>;

const LISTED = 8;

/** Entries of the catalogue with every word typed. Loaded on demand: it is large, and most visits never need it. */
export function listedWith(typed: string): Listed[] {
  return CATALOGUE.filter(({ name, words }) => hasEveryWord(`${name} ${words ?? ""}`, typed))
    .slice(0, LISTED)
    .map((picked) => {
      const { name, category, purchaseUnit: unit, dimensions } = entryOf(picked);
      const sizes = Object.entries(dimensions).map(([size, { value, unit: of }]) => [
        size,
        { value: value.toFixed(), unit: of },
      ]);
      return { key: picked.key, plain: { name, category, unit, dimensions: Object.fromEntries(sizes) } };
    });
}
