/** What tells the lines apart beside their colour. */
const DASHES = ["none", "7 4", "2 3", "11 3 2 3", "5 2"];

/** Colour and dash of a store's line, by its number. */
export function lookOf(index: number): Readonly<{ colour: string; dash: string }> {
  const at = index % DASHES.length;
  return { colour: `var(--series-${at + 1})`, dash: DASHES[at] ?? "none" };
}
