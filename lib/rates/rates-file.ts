import { jsonValue, looksLikeJson, member } from "../files/json-value.ts";
import { type Reading, unknownShape } from "../files/reading.ts";
import { type SeparatedText, separatedRows } from "../files/separated-rows.ts";
import { type DatedRatesAsked, euroRates, isH10, seriesRates } from "./dated-rates.ts";
import type { RateRead } from "./rate-read.ts";
import { valetCsv, valetJson, valetStart } from "./valet-rates.ts";

/** A file of rates as read. source: who publishes files of this shape; null: the file does not say. */
export type RatesFile = Readonly<{
  shape: "valet-csv" | "valet-json" | "euro" | "h10" | "day-and-value" | "unknown";
  source: string | null;
  readings: readonly Reading<RateRead>[];
}>;

const HEADING = /^(date|observation_date|day)$/i;

function isEuro({ rows: [head, first] }: SeparatedText): boolean {
  const [, ...codes] = head?.cells ?? [];
  const named = codes.filter((code) => code !== "");
  return first !== undefined && named.length > 1 && named.every((code) => /^[A-Z]{3}$/.test(code));
}

/**
 * The rates of a file, each figure with its fate; the shape is seen from the file itself: Bank of Canada Valet as CSV or
 * JSON, the ECB's daily or historical CSV, FRED's CSV of the Federal Reserve's H.10, or day and value. Never throws, and
 * makes a number only of what is plainly one.
 */
export function ratesFile(text: string, asked: DatedRatesAsked): RatesFile {
  if (looksLikeJson(text))
    return Array.isArray(member(jsonValue(text), "observations"))
      ? { shape: "valet-json", source: "Bank of Canada", readings: valetJson(text, asked) }
      : { shape: "unknown", source: null, readings: unknownShape(text) };
  const table = separatedRows(text);
  const [first = "", ...headings] = table.rows[0]?.cells ?? [];
  if (valetStart(table) > 0)
    return { shape: "valet-csv", source: "Bank of Canada", readings: valetCsv(table, asked) };
  if (!HEADING.test(first) || !headings.some((one) => one !== ""))
    return { shape: "unknown", source: null, readings: unknownShape(text) };
  if (isEuro(table))
    return { shape: "euro", source: "European Central Bank", readings: euroRates(table, asked) };
  const h10 = headings.some(isH10);
  return {
    shape: h10 ? "h10" : "day-and-value",
    source: h10 ? "Federal Reserve H.10" : null,
    readings: seriesRates(table, asked),
  };
}
