import { isLocalDate } from "../calendar/local-date.ts";
import { figureOf, isNoValue } from "../files/figure-text.ts";
import { items, type Json, jsonValue, member, plainText } from "../files/json-value.ts";
import { type Reading, refused, skipped } from "../files/reading.ts";
import { type IndexAsked, type IndexRead, indexRead } from "./index-read.ts";

const MONTH = /^M(0[1-9]|1[0-2])$/;
/** M13 is the mean of a year, S01 to S03 of half a year: none speaks of a month. */
const NO_MONTH = /^(M13|S0[123]|A01)$/;

function seriesIn(text: string): readonly Json[] {
  return items(member(member(jsonValue(text), "Results"), "series"));
}

/** Whether a JSON text is an answer of the bureau's interface. */
export function isLabourBureau(text: string): boolean {
  return seriesIn(text).length > 0;
}

function valueRead(
  one: Json,
  at: Readonly<{ row: number; column: string }>,
  asked: IndexAsked,
): Reading<IndexRead> {
  const [year, period, text] = ["year", "period", "value"].map((name) => plainText(member(one, name)));
  const there = { ...at, text: text ?? "" };
  if (NO_MONTH.test(period ?? "")) return skipped(there, "annual");
  const month = `${year}-${MONTH.exec(period ?? "")?.[1]}-01`;
  if (!isLocalDate(month)) return refused({ ...at, text: `${year} ${period}`.trim() }, "not-a-day");
  if (isNoValue(there.text)) return skipped(there, "no-value");
  const value = figureOf(there.text, "point");
  if (typeof value === "string") return refused(there, value);
  const preliminary = items(member(one, "footnotes")).some((note) => member(note, "code") === "P");
  return indexRead(there, { series: at.column, month, value, preliminary }, asked);
}

/**
 * The values of an answer of the US Bureau of Labor Statistics' public data interface, version 2; row: the place within its
 * series. Its annual M13 is passed over, and footnote P is kept as preliminary. Never throws. Source of the shape: BLS,
 * public data API (read).
 */
export function labourBureauJson(text: string, asked: IndexAsked): Reading<IndexRead>[] {
  return seriesIn(text).flatMap((series) => {
    const column = plainText(member(series, "seriesID"));
    return items(member(series, "data")).map((one, place) =>
      valueRead(one, { row: place + 1, column }, asked),
    );
  });
}
