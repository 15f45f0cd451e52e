import { type LocalDate, within } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ONE, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { importChargesOf } from "../prices/foreign-store.ts";
import { isImportRecovered } from "../prices/own-currency-price.ts";
import type { Store } from "../prices/store.ts";
import { taxShares } from "../prices/tax-shares.ts";
import type { Valuation } from "../prices/valuation.ts";
import { isRecovered, taxOn } from "../tax/tax.ts";
import type { BilledTax, Lot, Paid } from "./lot.ts";

/** Why a lot's cost cannot be said. */
export type NoCostReason = "tax-unknown" | "rate-unknown" | "region-unknown";

/**
 * A receipt reckoned, in the currency paid. gross: due to the store, fees and tax in it. recovered: the tax of it that
 * comes back. border: paid at the border beside it; borderCost: the part of that which does not come back.
 */
export type ReceiptDue = Readonly<{
  gross: Decimal;
  recovered: Decimal;
  border: Decimal;
  borderCost: Decimal;
}>;

const NOTHING_DUE: ReceiptDue = { gross: ZERO, recovered: ZERO, border: ZERO, borderCost: ZERO };
const NO_TAX = { known: true, all: ZERO, cost: ZERO } as const;

/** Fees before tax: an amount per unit or per order (that one waived from freeFrom up), a percent of the price before tax. */
function feesOf(paid: Paid, base: Decimal, quantity: Decimal): { all: Decimal; taxable: Decimal } {
  let all = ZERO;
  let taxable = ZERO;
  for (const fee of paid.fees) {
    const waived = fee.basis === "order" && fee.freeFrom !== null && base.greaterThanOrEqualTo(fee.freeFrom);
    const flat =
      fee.amount === null || waived ? ZERO : fee.amount.times(fee.basis === "unit" ? quantity : ONE);
    const amount = flat.plus(fee.percent === null ? ZERO : base.times(fee.percent).dividedBy(HUNDRED));
    all = all.plus(amount);
    if (fee.taxable) taxable = taxable.plus(amount);
  }
  return { all, taxable };
}

/** What the border takes of an amount before tax: all of it, and the part that is cost (R3). */
function borderOf(store: Store | undefined, valuation: Valuation, day: LocalDate, beforeTax: Decimal) {
  let border = ZERO;
  let borderCost = ZERO;
  for (const charge of store === undefined ? [] : importChargesOf(store, valuation)) {
    if (!within(day, charge.from, charge.until)) continue;
    const amount = beforeTax.times(charge.percent).dividedBy(HUNDRED);
    border = border.plus(amount);
    if (!isImportRecovered(charge.recoverable, valuation, day)) borderCost = borderCost.plus(amount);
  }
  return { border, borderCost };
}

/** The taxes a receipt shows: all of them, and those that come back; of a name the place does not know, nothing does. */
function shownTaxes(taxes: readonly BilledTax[], code: string | null, valuation: Valuation, day: LocalDate) {
  const region = code === null ? undefined : valuation.regions.get(code);
  const tax = region === undefined ? null : taxOn(region, day);
  const back = (tax?.known === true ? tax.components : [])
    .filter((component) => isRecovered(component, valuation.registrations, day))
    .map(({ name }) => name);
  const total = (some: readonly BilledTax[]) => some.reduce((sum, { amount }) => sum.plus(amount), ZERO);
  return { all: total(taxes), recovered: total(taxes.filter(({ name }) => back.includes(name))) };
}

/**
 * What a lot's receipt comes to with the tax, the registrations and the import charges of a day.
 *     base  = paid, without the tax in it;  gross = base + fees + tax on (base + taxable fees)
 *     recovered = the tax of gross that a buyer registered on that day gets back
 * Where the receipt shows its taxes they are taken as shown, to the cent: base + fees + taxes, recovered the shown ones.
 * Where neither the receipt nor a store says the region: no tax for salvage and left-overs (a private sale, a gift),
 * refused for what was bought. Units: the currency paid. Rounds: only divisions that do not end. Source: rules.md R3, R4, R9.
 */
export function receiptDue(
  lot: Lot,
  material: Material,
  valuation: Valuation,
  day: LocalDate,
): ReceiptDue | NoCostReason {
  const { paid } = lot;
  if (paid.amount.isZero() && paid.fees.length === 0) return NOTHING_DUE;
  const store = lot.storeId === null ? undefined : valuation.stores.get(lot.storeId);
  const region = paid.taxRegion ?? store?.taxRegion ?? null;
  if (region === null && (lot.origin === "bought" || lot.origin === "special-order")) return "region-unknown";
  const exempt = [...material.exemptFrom, ...paid.exemptFrom];
  const shares = region === null ? NO_TAX : taxShares(valuation, region, exempt, day);
  if (!shares.known) return shares.reason;

  if (paid.taxes !== null) {
    const taxes = shownTaxes(paid.taxes, region, valuation, day);
    const beforeTax = paid.taxIncluded ? paid.amount.minus(taxes.all) : paid.amount;
    const due = beforeTax.plus(feesOf(paid, beforeTax, lot.quantity).all);
    const border = borderOf(store, valuation, day, due);
    return { gross: due.plus(taxes.all), recovered: taxes.recovered, ...border };
  }
  const base = paid.taxIncluded ? paid.amount.dividedBy(shares.all.plus(ONE)) : paid.amount;
  const fees = feesOf(paid, base, lot.quantity);
  // A tax-inclusive amount is itself the total: stripped and taxed again it would lose its last digit.
  const price = paid.taxIncluded ? paid.amount : base.plus(base.times(shares.all));
  const gross = price.plus(fees.all).plus(fees.taxable.times(shares.all));
  const recovered = base.plus(fees.taxable).times(shares.all.minus(shares.cost));
  return { gross, recovered, ...borderOf(store, valuation, day, base.plus(fees.all)) };
}
