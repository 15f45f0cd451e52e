/** Text without accents and capitals, so that "Épinette" is found by "epin". */
export function folded(text: string): string {
  return text.normalize("NFD").replaceAll(/\p{M}/gu, "").toLowerCase();
}

/** True when every word typed stands somewhere in the text, in any order: "gyps 15" finds "Gypsum board 15.5 mm". */
export function hasEveryWord(text: string, typed: string): boolean {
  const within = folded(text);
  return folded(typed)
    .split(/\s+/)
    .every((word) => within.includes(word));
}
