import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Fault } from "../fault.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import type { Bill } from "./bill.ts";
import type { BillFigures } from "./bill-figures.ts";

export const DEPOSIT_EVENT_KINDS = ["given-back", "forfeited"] as const;
export type DepositEventKind = (typeof DEPOSIT_EVENT_KINDS)[number];

/** So much of a bill's deposit given back or forfeited on a day. deposit: its place on the bill; amount: before its tax. */
export type DepositEvent = Readonly<{
  id: string;
  billId: string;
  deposit: number;
  kind: DepositEventKind;
  amount: Decimal;
  on: LocalDate;
  note: string | null;
  sequence: number;
}>;

/** Where one deposit stands on a day, its tax in every amount: given back + forfeited + held is what was paid for it. */
export type DepositOnDay = Readonly<{ name: string; givenBack: Money; forfeited: Money; held: Money }>;

/** What the bill's deposits come to on a day. cost: the bill's, with what was forfeited by then (R4). */
export type DepositsOnDay = Readonly<{
  deposits: readonly DepositOnDay[];
  givenBack: Money;
  forfeited: Money;
  held: Money;
  cost: Money;
}>;

function inOrder(events: readonly DepositEvent[], deposit: number): DepositEvent[] {
  return events
    .filter((event) => event.deposit === deposit)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.sequence - b.sequence));
}

/**
 * What became of a bill's deposits by the end of a day.
 *     part of an event = paid x (all by then) / deposit, rounded, less what was parted before;  paid = deposit + its tax
 *     held = paid - given back - forfeited;  cost = the bill's cost + forfeited
 * Cash until forfeited, cost from that day on (R4). One forfeited when the bill was written is cost of its lines already,
 * and here neither held nor forfeited. Units: the bill's currency. Rounds: each event's part, so that all parts sum to
 * what was paid. Source: rules.md R4.
 */
export function depositsOn(
  bill: Bill,
  figures: BillFigures,
  events: readonly DepositEvent[],
  day: LocalDate,
): DepositsOnDay {
  const { currency } = bill;
  const deposits = bill.deposits.map((deposit, at): DepositOnDay => {
    const zero = money(ZERO, currency);
    const charged = figures.deposits[at];
    if (deposit.forfeited || charged === undefined)
      return { name: deposit.name, givenBack: zero, forfeited: zero, held: zero };
    const paid = bill.taxIncluded ? charged.amount.amount : charged.amount.amount.plus(charged.tax.amount);
    const sums = { "given-back": ZERO, forfeited: ZERO };
    let so = ZERO;
    let parted = ZERO;
    for (const event of inOrder(events, at)) {
      if (event.on > day) continue;
      so = so.plus(event.amount);
      const all = roundToMinorUnit(money(paid.times(so).dividedBy(deposit.amount), currency)).amount;
      sums[event.kind] = sums[event.kind].plus(all.minus(parted));
      parted = all;
    }
    return {
      name: deposit.name,
      givenBack: money(sums["given-back"], currency),
      forfeited: money(sums.forfeited, currency),
      held: money(paid.minus(parted), currency),
    };
  });
  const total = (of: (one: DepositOnDay) => Money) =>
    money(
      deposits.reduce((sum, one) => sum.plus(of(one).amount), ZERO),
      currency,
    );
  const forfeited = total((one) => one.forfeited);
  return {
    deposits,
    givenBack: total((one) => one.givenBack),
    forfeited,
    held: total((one) => one.held),
    cost: money(figures.cost.amount.plus(forfeited.amount), currency),
  };
}

/** Of a deposit, before its tax: what is neither given back nor forfeited by any event. */
export function depositLeft(bill: Bill, events: readonly DepositEvent[], deposit: number): Decimal {
  const all = bill.deposits[deposit]?.amount ?? ZERO;
  return inOrder(events, deposit).reduce((left, event) => left.minus(event.amount), all);
}

/**
 * Why something cannot have become of a deposit; empty when it can. events: the other ones, undone ones left out.
 * Faults: not-there (deposit: the bill has none there, or it was forfeited from the start), days-reversed (on: before the
 * bill), more-than-held (amount, with `has`). Source: rules.md R4.
 */
export function depositEventFaults(
  bill: Bill,
  events: readonly DepositEvent[],
  event: Pick<DepositEvent, "deposit" | "amount" | "on">,
): Fault[] {
  const deposit = bill.deposits[event.deposit];
  if (deposit === undefined || deposit.forfeited) return [{ path: "deposit", code: "not-there" }];
  const faults: Fault[] = event.on < bill.on ? [{ path: "on", code: "days-reversed" }] : [];
  const left = depositLeft(bill, events, event.deposit);
  if (event.amount.greaterThan(left))
    faults.push({ path: "amount", code: "more-than-held", values: { has: left.toFixed() } });
  return faults;
}
