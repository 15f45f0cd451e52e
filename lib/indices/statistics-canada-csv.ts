import { isLocalDate } from "../calendar/local-date.ts";
import { dayIn } from "../files/day-shapes.ts";
import { decimalSignOf, figureOf, isNoValue } from "../files/figure-text.ts";
import { type Reading, refused, skipped } from "../files/reading.ts";
import type { SeparatedText } from "../files/separated-rows.ts";
import { type IndexAsked, type IndexRead, indexRead } from "./index-read.ts";

const NEEDED = ["REF_DATE", "VECTOR", "VALUE"] as const;

/** Whether a table has the columns of Statistics Canada's downloads. */
export function isStatisticsCanada({ rows }: SeparatedText): boolean {
  return NEEDED.every((name) => rows[0]?.cells.includes(name));
}

/**
 * The values of a table of Statistics Canada as CSV, one row each; its series are its vectors. Status p is preliminary;
 * a value in thousands or millions (SCALAR_FACTOR) is no index and refused. Never throws. Source of the shape: Statistics
 * Canada, user guide to table downloads (from memory: columns REF_DATE, VECTOR, SCALAR_FACTOR, VALUE, STATUS).
 */
export function statisticsCanadaCsv(
  { rows: [head, ...body], separator }: SeparatedText,
  asked: IndexAsked,
): Reading<IndexRead>[] {
  const place = (name: string) => head?.cells.indexOf(name) ?? -1;
  const at = (cells: readonly string[], name: string) => cells[place(name)] ?? "";
  const sign = decimalSignOf(
    body.map(({ cells }) => at(cells, "VALUE")),
    separator,
  );
  return body.map(({ row, cells }): Reading<IndexRead> => {
    const text = at(cells, "VALUE");
    const there = { row, column: "VALUE", text };
    const series = at(cells, "VECTOR");
    if (asked.series !== null && series !== asked.series) return skipped(there, "not-asked-for");
    const dayText = at(cells, "REF_DATE");
    const month = dayIn(dayText, null);
    if (!isLocalDate(month)) return refused({ row, column: "REF_DATE", text: dayText }, month);
    if (isNoValue(text)) return skipped(there, "no-value");
    const scale = at(cells, "SCALAR_FACTOR");
    if (scale !== "" && scale.toLowerCase() !== "units")
      return refused({ row, column: "SCALAR_FACTOR", text: scale }, "unknown-unit");
    const value = figureOf(text, sign);
    if (typeof value === "string") return refused(there, value);
    const status = at(cells, "STATUS").toLowerCase();
    return indexRead(there, { series, month, value, preliminary: status === "p" }, asked);
  });
}
