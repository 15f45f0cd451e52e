/** Text for looking up: without accents and capitals. */
export function folded(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

/** Whether a text has every typed word in it, in any order: "ply 12" finds "Plywood spruce 12.5 mm". */
export function hasEveryWord(text: string, typed: string): boolean {
  const inside = folded(text);
  return folded(typed)
    .split(/\s+/)
    .every((word) => inside.includes(word));
}
