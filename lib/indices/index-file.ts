import { datedColumns } from "../files/dated-columns.ts";
import type { DayOrder } from "../files/day-shapes.ts";
import { looksLikeJson } from "../files/json-value.ts";
import { type Reading, unknownShape } from "../files/reading.ts";
import { type SeparatedText, separatedRows } from "../files/separated-rows.ts";
import { type IndexAsked, type IndexRead, indexRead } from "./index-read.ts";
import { isLabourBureau, labourBureauJson } from "./labour-bureau-json.ts";
import { isStatisticsCanada, statisticsCanadaCsv } from "./statistics-canada-csv.ts";

/** A file of index values as read. series: every series in it. publisher: who publishes files of this shape; null: it does not say. */
export type IndexFile = Readonly<{
  shape: "labour-bureau" | "statistics-canada" | "month-and-value" | "unknown";
  publisher: string | null;
  series: readonly string[];
  readings: readonly Reading<IndexRead>[];
}>;

export type IndexFileAsked = IndexAsked & Readonly<{ order?: DayOrder | undefined }>;

const HEADING = /^(date|observation_date|month|ref_date)$/i;
const NO_FILE = { publisher: null, series: [] } as const;

function monthAndValue(
  table: SeparatedText,
  { order, ...asked }: IndexFileAsked,
): Pick<IndexFile, "series" | "readings"> | null {
  const [first = "", ...headings] = table.rows[0]?.cells ?? [];
  const series = headings.filter((one) => one !== "");
  if (!HEADING.test(first) || series.length === 0) return null;
  const readings = datedColumns(table, { monthly: true, order }).map((one): Reading<IndexRead> => {
    if (one.fate !== "accepted") return one;
    const { on, series: of, figure } = one.value;
    return indexRead(one, { series: of, month: on, value: figure, preliminary: null }, asked);
  });
  return { series, readings };
}

function seriesOf(read: (asked: IndexAsked) => readonly Reading<IndexRead>[]): string[] {
  const all = read({ series: null });
  return [...new Set(all.flatMap((one) => (one.fate === "accepted" ? [one.value.series] : [])))].sort();
}

/**
 * The values of an index in a file, each with its fate; the shape is seen from the file itself: FRED CSV (old, new and
 * quoted headings, days as a spreadsheet rewrites them), the US Bureau of Labor Statistics' JSON, a table of Statistics
 * Canada as CSV, or month and value. Never throws, and makes a number only of what is plainly one.
 */
export function indexFile(text: string, asked: IndexFileAsked): IndexFile {
  if (looksLikeJson(text)) {
    if (!isLabourBureau(text)) return { ...NO_FILE, shape: "unknown", readings: unknownShape(text) };
    const read = (one: IndexAsked) => labourBureauJson(text, one);
    const publisher = "US Bureau of Labor Statistics";
    return { shape: "labour-bureau", publisher, series: seriesOf(read), readings: read(asked) };
  }
  const table = separatedRows(text);
  if (isStatisticsCanada(table)) {
    const read = (one: IndexAsked) => statisticsCanadaCsv(table, one);
    return {
      shape: "statistics-canada",
      publisher: "Statistics Canada",
      series: seriesOf(read),
      readings: read(asked),
    };
  }
  const read = monthAndValue(table, asked);
  return read === null
    ? { ...NO_FILE, shape: "unknown", readings: unknownShape(text) }
    : { ...read, publisher: null, shape: "month-and-value" };
}
