import Papa from "papaparse";
import type { FlatRows } from "./flat-rows.ts";
import type { WordedCell } from "./worded.ts";

/** What a spreadsheet would take for a formula. */
const FORMULA = /^[=+\-@\t\r]/;
/** Lets a spreadsheet know the letters: without it, accents come out wrong there. */
const MARK = "\ufeff";

/** Text that no spreadsheet reckons with; amounts stay as they are, losses with their minus. */
export function guarded(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

function plain({ text, value }: WordedCell): string {
  if (value === undefined) return guarded(text);
  return value.kind === "day" ? value.day : value.digits;
}

/** Rows as separated text (RFC 4180): exact decimals with a point, days as YYYY-MM-DD, what is not known left empty. */
export function csvFile({ columns, rows }: FlatRows): string {
  const fields = columns.map(({ key }) => key);
  const data = rows.map((row) => row.map(plain));
  return MARK + Papa.unparse({ fields, data });
}
