/** A sentence with its places filled: "{amount} more" and { amount: "0.01" }. */
export function fill(sentence: string, values: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (place, key: string) => values[key] ?? place);
}
