import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { type CurrencyCode, MINOR_UNITS } from "../../../lib/money/currencies.ts";
import type { Money } from "../../../lib/money/money.ts";
import type { SavingTotals } from "../../../lib/savings/savings-figures.ts";
import type { CountText } from "../../../lib/show/count-text.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { moneyText, plainMoney } from "../../../lib/show/money-text.ts";
import { gainText } from "../../../lib/show/savings-rows.ts";
import type { ReportWords, WordedCell } from "./worded.ts";

/** An amount, or in words that it is not known. signed: a part, which may be below nothing. */
export function moneyCell(value: Money | null, { s, locale }: ReportWords, signed = false): WordedCell {
  if (value === null) return { text: s("notKnown") };
  const digits = plainMoney(value).amount;
  return {
    text: moneyText(value, locale, { signed }),
    value: { kind: "number", digits, places: MINOR_UNITS[value.currency] },
  };
}

/** A saving or a loss with the word for it. */
export function gainCell(value: Money | null, words: ReportWords): WordedCell {
  if (value === null) return moneyCell(null, words);
  const gain = gainText(value, words.locale);
  return { ...moneyCell(value, words), text: gain.figure, under: [words.s(gain.side)] };
}

/**
 * One sum of totals: a dash where there are no rows, and in words that it is not known where no row of them is; never 0 for
 * want of a price.
 */
export function totalCell(
  totals: SavingTotals,
  of: "saving" | "strictSaving",
  words: ReportWords,
): WordedCell {
  const unknown = totals.notKnown + (of === "strictSaving" ? totals.strictNotKnown : 0);
  if (totals.rows === 0) return { text: "–" };
  return gainCell(totals.rows === unknown ? null : totals[of], words);
}

/** A quantity; a spreadsheet gets all its digits. */
export function countCell({ text, exact }: CountText): WordedCell {
  return { text, value: { kind: "number", digits: exact, places: 3 } };
}

/** How many there are of something. */
export function numberCell(count: number): WordedCell {
  return { text: String(count), value: { kind: "number", digits: String(count), places: 0 } };
}

/** A day; a dash where there is none. */
export function dayCell(day: LocalDate | null, { locale }: ReportWords): WordedCell {
  return day === null ? { text: "–" } : { text: dayText(day, locale), value: { kind: "day", day } };
}

/** An amount with its currency, as on a tag. */
export function tagText(value: Money | null, locale: string): string {
  return value === null ? "–" : `${moneyText(value, locale)} ${value.currency satisfies CurrencyCode}`;
}
