import type { Bill, TaxRounding } from "../bills/bill.ts";
import { type BillFigures, type BillTerms, billFigures } from "../bills/bill-figures.ts";
import { lineShares } from "../bills/line-shares.ts";
import { type Difference, reconciliation } from "../bills/reconciliation.ts";
import { ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";
import { figureText, moneyText } from "./money-text.ts";

export type NamedAmount = Readonly<{ key: string; name: string; amount: string }>;

/** Whether it comes to the printed total; difference with its sign: "+0.01" when more was printed. */
export type ReconciledText =
  | Readonly<{ state: "no-printed-total" }>
  | Readonly<{ state: "reconciled"; total: string }>
  | Readonly<{
      state: "differs";
      difference: string;
      why: Difference["why"];
      roundings: readonly TaxRounding[];
      /** What the taxes come to rounded so, and as the bill says; null: that is not why. */
      taxes: Readonly<{ met: string; reckoned: string }> | null;
    }>;

/** A bill's figures as text, in its currency. lines: net and cost by place. Left out (null): what is nothing. */
export type BillText = Readonly<{
  currency: CurrencyCode;
  lines: readonly Readonly<{ net: string; cost: string | null }>[];
  subtotal: string;
  lineFees: string | null;
  fees: readonly NamedAmount[];
  deposits: readonly NamedAmount[];
  taxes: readonly NamedAmount[];
  total: string;
  due: string | null;
  refundable: string | null;
  rebates: string | null;
  cost: string;
  reconciled: ReconciledText;
}>;

function reconciledText(
  bill: Bill,
  terms: BillTerms,
  figures: BillFigures,
  text: (value: Money, signed?: boolean) => string,
): ReconciledText {
  const found = reconciliation(bill, terms, figures);
  if (found.state === "no-printed-total") return found;
  if (found.state === "reconciled") return { state: "reconciled", total: text(found.total) };
  const { because, difference } = found;
  const differs = { state: "differs", difference: text(difference, true), why: because.why } as const;
  return because.why === "another-rounding"
    ? {
        ...differs,
        roundings: because.roundings,
        taxes: { met: text(because.met), reckoned: text(because.reckoned) },
      }
    : { ...differs, roundings: [], taxes: null };
}

/** A bill reckoned, as text for reading. Rounds: as `billFigures` and `lineShares`. null: a line cannot be read in its unit. */
export function billText(bill: Bill, terms: BillTerms, locale: string): BillText | null {
  const figures = billFigures(bill, terms);
  if (figures === null) return null;
  const { currency } = bill;
  const shares = lineShares(bill, terms, figures);
  const text = (value: Money, signed = false) => moneyText(value, locale, { signed });
  const unlessNothing = (value: Money) => (value.amount.isZero() ? null : text(value));
  const named = (beside: BillFigures["fees"]): NamedAmount[] =>
    beside.map(({ name, amount }, at) => ({ key: `${at} ${name}`, name, amount: text(amount) }));
  const lineFees = figures.lines
    .flatMap(({ fees }) => fees)
    .reduce((sum, { amount }) => sum.plus(amount.amount), ZERO);
  return {
    currency,
    lines: figures.lines.map(({ net }, at) => {
      const share = shares?.[at];
      return { net: text(net), cost: share === undefined ? null : text(share.total) };
    }),
    subtotal: text(figures.subtotal),
    lineFees: unlessNothing(money(lineFees, currency)),
    fees: named(figures.fees),
    deposits: named(figures.deposits),
    taxes: figures.taxes.map(({ component, amount }) => ({
      key: component.name,
      name: `${component.name} ${figureText(component.ratePercent, locale, 0, 6)} %`,
      amount: text(amount),
    })),
    total: text(figures.total),
    due: bill.paidInCash ? text(figures.due) : null,
    refundable: unlessNothing(figures.refundable),
    rebates: unlessNothing(figures.rebates),
    cost: text(figures.cost),
    reconciled: reconciledText(bill, terms, figures, text),
  };
}
