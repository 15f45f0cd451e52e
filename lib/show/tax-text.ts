import type { LocalDate } from "../calendar/local-date.ts";
import type { TaxRegion } from "../tax/region.ts";
import { taxOn } from "../tax/tax.ts";
import { percentText } from "./percent-text.ts";

/** The taxes of a region on a day in one line: "GST 5%, QST 9.975%"; the given words where there is none or it is not known. */
export function taxText(
  region: TaxRegion,
  day: LocalDate,
  locale: string,
  words: Readonly<{ none: string; notKnown: string }>,
): string {
  const tax = taxOn(region, day);
  if (!tax.known) return words.notKnown;
  if (tax.components.length === 0) return words.none;
  return tax.components.map((part) => `${part.name} ${percentText(part.ratePercent, locale)}`).join(", ");
}

/** The names of all taxes of some regions, and further ones, each once, by name. */
export function taxNames(regions: readonly TaxRegion[], further: readonly string[] = []): string[] {
  const names = regions.flatMap(({ components }) => components.map(({ name }) => name));
  return [...new Set([...names, ...further])].sort((a, b) => a.localeCompare(b));
}
