import type { LocalDate } from "../calendar/local-date.ts";
import { type IndexValue, valuesAsOf } from "../indices/index-value.ts";
import { dayText } from "./day-text.ts";
import { figureText } from "./money-text.ts";
import { monthOfYearText } from "./month-of-year-text.ts";

/** One month of an index for reading. earlier: what was published of it before, the newest first. */
export type IndexMonth = Readonly<{
  key: string;
  month: string;
  value: string;
  published: string;
  preliminary: boolean;
  earlier: readonly string[];
}>;

/** The months of an index as known on a day, the newest first. Rounds: as published, to 6 places. */
export function indexMonths(values: readonly IndexValue[], day: LocalDate, locale: string): IndexMonth[] {
  const figure = ({ value }: IndexValue) => figureText(value, locale, 1, 6);
  return valuesAsOf(values, day)
    .reverse()
    .map((known) => ({
      key: known.month,
      month: monthOfYearText(known.month, locale),
      value: figure(known),
      published: dayText(known.publishedOn, locale),
      preliminary: known.preliminary === true,
      earlier: values
        .filter(({ month, publishedOn }) => month === known.month && publishedOn < known.publishedOn)
        .sort((a, b) => (a.publishedOn < b.publishedOn ? 1 : -1))
        .map((one) => `${figure(one)} (${dayText(one.publishedOn, locale)})`),
    }));
}
