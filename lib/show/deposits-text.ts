import type { Bill } from "../bills/bill.ts";
import { type BillTerms, billFigures } from "../bills/bill-figures.ts";
import { type DepositEvent, depositLeft, depositsOn } from "../bills/deposit-events.ts";
import type { LocalDate } from "../calendar/local-date.ts";
import { type Money, money } from "../money/money.ts";
import { dayText } from "./day-text.ts";
import { moneyText } from "./money-text.ts";

/** One deposit as text, its tax in it. left: what is held before its tax, canonical, to begin a form with; null: nothing. */
export type DepositText = Readonly<{
  at: number;
  name: string;
  givenBack: string | null;
  forfeited: string | null;
  held: string | null;
  left: string | null;
}>;

/** A bill's deposits that may come back, on a day. cost: the bill's, with what is forfeited in it; null: nothing is. */
export type DepositsText = Readonly<{
  deposits: readonly DepositText[];
  events: readonly Readonly<{
    id: string;
    kind: DepositEvent["kind"];
    name: string;
    amount: string;
    day: string;
    note: string | null;
  }>[];
  cost: string | null;
}>;

/** What became of a bill's deposits by a day, for reading. null: it has none, or cannot be reckoned. Rounds: as `depositsOn`. */
export function depositsText(
  bill: Bill,
  terms: BillTerms,
  { events, day }: Readonly<{ events: readonly DepositEvent[]; day: LocalDate }>,
  locale: string,
): DepositsText | null {
  const figures = billFigures(bill, terms);
  if (figures === null || bill.deposits.every(({ forfeited }) => forfeited)) return null;
  const found = depositsOn(bill, figures, events, day);
  const unlessNothing = (value: Money) => (value.amount.isZero() ? null : moneyText(value, locale));
  const deposits = found.deposits.flatMap((one, at): DepositText[] => {
    if (bill.deposits[at]?.forfeited !== false) return [];
    const left = depositLeft(bill, events, at);
    return [
      {
        at,
        name: one.name,
        givenBack: unlessNothing(one.givenBack),
        forfeited: unlessNothing(one.forfeited),
        held: unlessNothing(one.held),
        left: left.isZero() ? null : left.toFixed(),
      },
    ];
  });
  return {
    deposits,
    events: events.map(({ id, kind, deposit, amount, on, note }) => ({
      id,
      kind,
      name: bill.deposits[deposit]?.name ?? "",
      amount: moneyText(money(amount, bill.currency), locale),
      day: dayText(on, locale),
      note,
    })),
    cost: found.forfeited.amount.isZero() ? null : moneyText(found.cost, locale),
  };
}
