import { type Decimal, ZERO } from "../decimal.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import type { TaxComponent } from "../tax/region.ts";
import { baseOfInclusive, type TaxAmount, taxes } from "../tax/tax.ts";
import { apportion } from "./apportion.ts";
import type { TaxRounding } from "./bill.ts";

/** One amount on a bill that bears tax. exempt: names of components that do not apply to it. */
export type TaxedItem = Readonly<{ amount: Money; exempt: readonly string[] }>;

/** What the bill shows per component, and what of each component each item bears (in the orders given), to the cent. */
export type BilledTaxes = Readonly<{
  shown: readonly TaxAmount[];
  ofItems: readonly (readonly TaxAmount[])[];
}>;

/** What a bill's taxes are reckoned with. included: the amounts hold their tax already. */
export type TaxTerms = Readonly<{
  components: readonly TaxComponent[];
  included: boolean;
  rounding: TaxRounding;
}>;

function exactTaxes({ amount, exempt }: TaxedItem, { components, included }: TaxTerms): Decimal[] {
  const base = included ? baseOfInclusive(amount, components, exempt) : amount;
  const borne = taxes(base, components, exempt);
  return components.map((one) => borne.find(({ component }) => component === one)?.amount.amount ?? ZERO);
}

function total(values: readonly Decimal[]): Decimal {
  return values.reduce((sum, value) => sum.plus(value), ZERO);
}

/** Rounds a row of exact amounts: each by itself, or their sum once, laid back on them. */
function rounded(exact: readonly Decimal[], together: boolean, like: Money): Decimal[] {
  const cent = (value: Decimal) => roundToMinorUnit(money(value, like.currency));
  if (!together) return exact.map((value) => cent(value).amount);
  return apportion(cent(total(exact)), exact).map(({ amount }) => amount);
}

/**
 * The taxes a bill shows and which item bears how much of them.
 *     per-bill: each component rounded once on everything; per-line: on each item; "-together": the components' sum is
 *     what is rounded, then laid back on them. With the tax included in the prices it is what is taken out of them.
 * Every cent shown is borne by an item: what rounding the whole gives beyond its parts goes to the largest remainders.
 * A component no item bears is not shown. Rounds: as the seller does, half up, away from zero for refunds.
 * Source: CRA GST/HST interpretation 125136 (2011) and Revenu Quebec, "Calculating the Taxes": either way is accepted
 * when used consistently; Streamlined Sales and Use Tax Agreement s. 324: item or invoice, state and local together or not.
 */
export function taxesOfBill(items: readonly TaxedItem[], terms: TaxTerms): BilledTaxes {
  const [first] = items;
  if (first === undefined) return { shown: [], ofItems: [] };
  const together = terms.rounding.endsWith("-together");
  const exact = items.map((item) => exactTaxes(item, terms));
  const column = (at: number, from: readonly (readonly Decimal[])[]) => from.map((row) => row[at] ?? ZERO);
  const like = first.amount;
  let cells: Decimal[][];
  if (terms.rounding.startsWith("per-line")) {
    cells = exact.map((row) => rounded(row, together, like));
  } else {
    const sums = terms.components.map((_, at) => total(column(at, exact)));
    const columns = rounded(sums, together, like).map((sum, at) =>
      apportion(money(sum, like.currency), column(at, exact)).map(({ amount }) => amount),
    );
    cells = items.map((_, row) => column(row, columns));
  }
  const shown = terms.components.flatMap((component, at): TaxAmount[] => {
    const borne = items.some(({ exempt }) => !exempt.includes(component.name));
    return borne ? [{ component, amount: money(total(column(at, cells)), like.currency) }] : [];
  });
  const ofItems = cells.map((row) =>
    terms.components.map((component, at) => ({ component, amount: money(row[at] ?? ZERO, like.currency) })),
  );
  return { shown, ofItems };
}
