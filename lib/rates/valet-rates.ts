import { isLocalDate } from "../calendar/local-date.ts";
import { datedColumns } from "../files/dated-columns.ts";
import { dayIn } from "../files/day-shapes.ts";
import { figureOf, isNoValue } from "../files/figure-text.ts";
import { items, jsonValue, member, plainText } from "../files/json-value.ts";
import { type Reading, refused, skipped } from "../files/reading.ts";
import type { SeparatedText } from "../files/separated-rows.ts";
import { type RateRead, type RatesAsked, rateRead } from "./rate-read.ts";

// FXUSDCAD: one US dollar in Canadian dollars. Annual and monthly means (FXAUSDCAD, FXMUSDCAD) are no rates of a day.
const DAILY = /^FX([A-Z]{3})([A-Z]{3})$/;
const MEAN = /^FX[AM]([A-Z]{3})([A-Z]{3})$/;

function pairOf(series: string): Readonly<{ base: string; quote: string }> | "mean" | null {
  if (MEAN.test(series)) return "mean";
  const [, base, quote] = DAILY.exec(series) ?? [];
  return base === undefined || quote === undefined ? null : { base, quote };
}

/** Where the observations of a Valet text begin; -1: it is none. */
export function valetStart({ rows }: SeparatedText): number {
  const at = rows.findIndex(({ cells }) => cells[0] === "OBSERVATIONS");
  return at < 0 || rows[at + 1]?.cells[0]?.toLowerCase() !== "date" ? -1 : at + 1;
}

/** The rates of a Valet CSV. Source of the shape: Bank of Canada, Valet web services, observations as CSV (read). */
export function valetCsv(text: SeparatedText, asked: RatesAsked): Reading<RateRead>[] {
  const table = { ...text, rows: text.rows.slice(valetStart(text)) };
  return datedColumns(table, { monthly: false }).map((one): Reading<RateRead> => {
    if (one.fate !== "accepted") return one;
    const { on, series, figure } = one.value;
    const pair = pairOf(series);
    if (pair === "mean") return skipped(one, "monthly-mean");
    return pair === null
      ? skipped(one, "not-asked-for")
      : rateRead(one, { on, ...pair, rate: figure }, asked);
  });
}

/** The rates of a Valet JSON, row: the place among its observations. Source of the shape: Bank of Canada, Valet web services (read). */
export function valetJson(text: string, asked: RatesAsked): Reading<RateRead>[] {
  const observations = items(member(jsonValue(text), "observations"));
  return observations.flatMap((observation, place): Reading<RateRead>[] => {
    const row = place + 1;
    const dayText = plainText(member(observation, "d"));
    const on = dayIn(dayText, null);
    if (!isLocalDate(on)) return [refused({ row, column: "d", text: dayText }, on)];
    const names = Object.keys(observation as object).filter((name) => name !== "d");
    if (names.length === 0) return [skipped({ row, column: "", text: "" }, "no-value")];
    return names.map((column): Reading<RateRead> => {
      const figureText = plainText(member(member(observation, column), "v"));
      const at = { row, column, text: figureText };
      const pair = pairOf(column);
      if (pair === "mean") return skipped(at, "monthly-mean");
      if (pair === null) return skipped(at, "not-asked-for");
      if (isNoValue(figureText)) return skipped(at, "no-value");
      const rate = figureOf(figureText, "point");
      return typeof rate === "string" ? refused(at, rate) : rateRead(at, { on, ...pair, rate }, asked);
    });
  });
}
