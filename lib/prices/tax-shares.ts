import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ONE, ZERO } from "../decimal.ts";
import { money } from "../money/money.ts";
import { isRecovered, taxes, taxOn } from "../tax/tax.ts";
import type { Valuation } from "./valuation.ts";

/** What one unit of money before tax bears: all tax, and the part that is cost because nobody gives it back (R3). */
export type TaxShares =
  | Readonly<{ known: true; all: Decimal; cost: Decimal }>
  | Readonly<{ known: false; reason: "tax-unknown" | "region-unknown" }>;

/** Worked out once per valuation, place, day and exemption: a page values thousands of prices of the same few. */
const worked = new WeakMap<Valuation, Map<string, TaxShares>>();

function workOut(valuation: Valuation, code: string, exempt: readonly string[], day: LocalDate): TaxShares {
  const region = valuation.regions.get(code);
  if (region === undefined) return { known: false, reason: "region-unknown" };
  const tax = taxOn(region, day);
  if (!tax.known) return tax;
  let all = ZERO;
  let cost = ZERO;
  for (const { component, amount } of taxes(money(ONE, valuation.homeCurrency), tax.components, exempt)) {
    all = all.plus(amount.amount);
    if (!isRecovered(component, valuation.registrations, day)) cost = cost.plus(amount.amount);
  }
  return { known: true, all, cost };
}

/**
 * The shares of tax at a place on a day: all = sum of the components' taxes on 1; cost = the same without what the
 * workspace, as registered on that day, recovers. exempt: names of components left out. Rounds: never.
 */
export function taxShares(
  valuation: Valuation,
  code: string,
  exempt: readonly string[],
  day: LocalDate,
): TaxShares {
  let kept = worked.get(valuation);
  if (kept === undefined) {
    kept = new Map();
    worked.set(valuation, kept);
  }
  const key = exempt.length === 0 ? `${day} ${code}` : `${day} ${code} ${[...exempt].sort().join("|")}`;
  let shares = kept.get(key);
  if (shares === undefined) {
    shares = workOut(valuation, code, exempt, day);
    kept.set(key, shares);
  }
  return shares;
}
