import { isLocalDate, type LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { type DayOrder, dayIn, dayOrderOf } from "./day-shapes.ts";
import { decimalSignOf, figureOf, isNoValue } from "./figure-text.ts";
import { type Reading, read, refused, skipped } from "./reading.ts";
import type { SeparatedText } from "./separated-rows.ts";

/** One figure of a table with a day in its first column and a series in each of the others. */
export type DatedFigure = Readonly<{ on: LocalDate; series: string; figure: Decimal }>;

/** monthly: every row speaks of a month. order: which way round days are written, where the person said so. */
export type DatedTerms = Readonly<{ monthly: boolean; order?: DayOrder | undefined }>;

/**
 * Every figure of such a table: one reading per cell below a heading; one for a whole row whose day cannot be read, or that
 * has cells past the last heading. Empty headings at the end (a trailing separator) are no columns.
 */
export function datedColumns(
  { separator, rows }: SeparatedText,
  { monthly, order }: DatedTerms,
): Reading<DatedFigure>[] {
  const [head, ...body] = rows;
  if (head === undefined) return [];
  const [first = "", ...headings] = head.cells;
  while (headings.at(-1) === "") headings.pop();
  const dayOrder =
    order ??
    dayOrderOf(
      body.map(({ cells }) => cells[0] ?? ""),
      { monthly },
    );
  const sign = decimalSignOf(
    body.flatMap(({ cells }) => cells.slice(1)),
    separator,
  );
  return body.flatMap(({ row, cells: [dayText = "", ...cells] }): Reading<DatedFigure>[] => {
    const on = dayIn(dayText, dayOrder);
    if (!isLocalDate(on)) return [refused({ row, column: first, text: dayText }, on)];
    const over = cells.slice(headings.length).find((cell) => cell !== "");
    if (over !== undefined) return [refused({ row, column: "", text: over }, "too-many")];
    return headings.map((series, place): Reading<DatedFigure> => {
      const text = cells[place] ?? "";
      const at = { row, column: series, text };
      if (isNoValue(text)) return skipped(at, "no-value");
      const figure = figureOf(text, sign);
      return typeof figure === "string" ? refused(at, figure) : read(at, { on, series, figure });
    });
  });
}
