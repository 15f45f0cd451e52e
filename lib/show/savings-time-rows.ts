import type { LocalDate } from "../calendar/local-date.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import type { SavedBy } from "../savings/savings-through-time.ts";
import type { HeldOn } from "../savings/unrealised-through-time.ts";
import { moneyText } from "./money-text.ts";

/** What the picture shows, in figures: one line for each day it marks. unrealised null: not known. */
export type SavingsTimeRow = Readonly<{
  on: LocalDate;
  saved: string;
  lost: string;
  net: string;
  unrealised: string | null;
}>;

/** The picture's figures at each of its marked days, those of the day's end. Rounds: nothing further. */
export function savingsTimeRows(
  points: readonly SavedBy[],
  marks: readonly HeldOn[],
  currency: CurrencyCode,
  locale: string,
): SavingsTimeRow[] {
  const nothing = money(0, currency);
  const text = (value: typeof nothing) => moneyText(value, locale, { signed: true });
  return marks.map(({ on, unrealised, notKnown }) => {
    const by = points.findLast((point) => point.on <= on);
    return {
      on,
      saved: text(by?.saved ?? nothing),
      lost: text(by?.lost ?? nothing),
      net: text(by?.net ?? nothing),
      unrealised: notKnown > 0 && unrealised.amount.isZero() ? null : text(unrealised),
    };
  });
}
