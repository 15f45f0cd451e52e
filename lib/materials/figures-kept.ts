import type { Dimensions, FigureName, Sources } from "./material.ts";

type Figures = Readonly<{ dimensions: Dimensions; shelfLifeDays: number | null }>;

function isSame(name: FigureName, before: Figures, after: Figures): boolean {
  if (name === "shelfLifeDays")
    return after.shelfLifeDays !== null && after.shelfLifeDays === before.shelfLifeDays;
  const [was, is] = [before.dimensions[name], after.dimensions[name]];
  return was !== undefined && is !== undefined && was.unit === is.unit && was.value.equals(is.value);
}

/**
 * The sources that still speak of the figures as they are after a change: a figure put in by hand was not read where the
 * one before it was. Units: a figure restated in another unit counts as another figure.
 */
export function sourcesKept(sources: Sources, before: Figures, after: Figures): Sources {
  return Object.fromEntries(
    Object.entries(sources).filter(([name]) => isSame(name as FigureName, before, after)),
  );
}
