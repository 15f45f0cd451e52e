import { catalogued } from "../../lib/materials/catalogue/catalogue.ts";
import { type CatalogueEntry, entryOf } from "../../lib/materials/catalogue/entry.ts";
import type { Material } from "../../lib/materials/material.ts";

/** A catalogue entry as the material somebody made of it. */
export function materialOf(entry: CatalogueEntry): Material {
  return { ...entryOf(entry), id: entry.key, archivedOn: null };
}

/** The same by its key. Throws: {Error} when the catalogue has none. */
export function fromCatalogue(key: string): Material {
  const entry = catalogued(key);
  if (entry === null) throw new Error(`nothing in the catalogue is called ${key}`);
  return materialOf(entry);
}
