import Papa from "papaparse";

/** One row of a separated text: `row` is the line of the file it begins on, from 1; cells are trimmed. */
export type SeparatedRow = Readonly<{ row: number; cells: readonly string[] }>;
/** The rows of a file. separator: what stands between its cells. */
export type SeparatedText = Readonly<{ separator: "," | ";" | "\t"; rows: readonly SeparatedRow[] }>;

const SAMPLE = 50;

// A decimal comma occurs in every line of a file with semicolons, so the rarer sign is asked for first.
function separatorOf(text: string): SeparatedText["separator"] {
  const lines = text
    .slice(0, 20_000)
    .split(/\r\n|\r|\n/)
    .slice(0, SAMPLE)
    .map((line) => line.replaceAll(/"[^"]*"/g, ""))
    .filter((line) => line.trim() !== "");
  const isIn = (sign: string) => lines.filter((line) => line.includes(sign)).length * 2 >= lines.length;
  if (lines.length === 0) return ",";
  return isIn("\t") ? "\t" : isIn(";") ? ";" : ",";
}

/**
 * The rows of a text with commas, semicolons or tabs between its cells, quotes around some of them, and any line ends. Rows
 * without anything, and remarks (a first cell that begins with #), are left out. A quote that is never closed makes the
 * rest of the file one cell, which its reader refuses. Never throws. Source: RFC 4180, read by papaparse.
 */
export function separatedRows(given: string): SeparatedText {
  const text = given.replace(/^\uFEFF/, "").replaceAll(/\r\n?/g, "\n");
  const separator = separatorOf(text);
  const { data } = Papa.parse<string[]>(text, { delimiter: separator, newline: "\n" });
  const rows: SeparatedRow[] = [];
  let row = 1;
  for (const raw of data) {
    const cells = raw.map((cell) => cell.trim());
    if (cells.some((cell) => cell !== "") && !cells[0]?.startsWith("#")) rows.push({ row, cells });
    row += 1 + raw.reduce((breaks, cell) => breaks + cell.split("\n").length - 1, 0);
  }
  return { separator, rows };
}
