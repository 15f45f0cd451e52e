/** Headings that name no series: the file is of whatever the person says it is of. */
const PLAIN = /^(value|values|index|level)$/i;

/**
 * Which series of a file is the one wanted: the one of that name, or the only one where its heading names none; where none
 * is wanted yet, the only one. null: the file has another, or several.
 */
export function seriesToTake(series: readonly string[], wanted: string | null): string | null {
  if (wanted !== null && series.includes(wanted)) return wanted;
  const [only, ...others] = series;
  if (only === undefined || others.length > 0) return null;
  return wanted === null || PLAIN.test(only) ? only : null;
}
