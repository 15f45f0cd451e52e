import type { TakeoffWords } from "./takeoff-words.ts";

function wordsFor(words: TakeoffWords, name: string): string | undefined {
  const known = { ...words.fields, ...words.rows, ...words.measures };
  return new Map(Object.entries(known)).get(name);
}

/** A field, a group of rows or a measure by its name in words. */
export function named(words: TakeoffWords, name: string): string {
  return wordsFor(words, name) ?? name;
}

/** A formula with the names of fields and measures in words: "plan area × slope factor". */
export function formulaText(words: TakeoffWords, formula: string): string {
  return formula.replace(/[a-z][A-Za-z]*/g, (name) => {
    const known = wordsFor(words, name);
    return known === undefined ? name : known.charAt(0).toLowerCase() + known.slice(1);
  });
}
