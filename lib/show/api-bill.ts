import type * as z from "zod";
import type { Bill, BilledFee, BilledLine } from "../bills/bill.ts";
import { type BesideLines, type BillFigures, type BillTerms, billFigures } from "../bills/bill-figures.ts";
import { type DepositEvent, depositsOn } from "../bills/deposit-events.ts";
import { type LineShare, lineShares } from "../bills/line-shares.ts";
import { type Reconciliation, reconciliation } from "../bills/reconciliation.ts";
import { localDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type {
  besideShape,
  billedFeeShape,
  billFiguresShape,
  billLineShape,
  billShape,
  depositEventShape,
  reconciliationShape,
} from "./api-bill-shape.ts";
import { enteredDigits, exactDigits, exactDigitsOrNull, totalDigits } from "./api-fields.ts";

const LAST_DAY = localDate("9999-12-31");

type Kept = Omit<Bill, "lines"> &
  Readonly<{
    id: string;
    lines: readonly (BilledLine &
      Readonly<{ observationId: string | null; lotId: string | null; stockEventId: string | null }>)[];
    deletedAt: string | null;
    deposited: readonly (DepositEvent & Readonly<{ undoneAt: string | null }>)[];
    terms: BillTerms | null;
  }>;

function apiFee({ name, amount, percent, taxable }: BilledFee): z.output<typeof billedFeeShape> {
  return { name, amount: exactDigitsOrNull(amount), percent: exactDigitsOrNull(percent), taxable };
}

function apiEither<T extends { amount: Decimal | null; percent: Decimal | null }>(given: T) {
  return { ...given, amount: exactDigitsOrNull(given.amount), percent: exactDigitsOrNull(given.percent) };
}

function apiBeside({ name, amount, tax }: BesideLines): z.output<typeof besideShape> {
  return { name, amount: totalDigits(amount), tax: totalDigits(tax) };
}

function apiReconciliation(found: Reconciliation): z.output<typeof reconciliationShape> {
  if (found.state !== "differs") return { state: found.state, difference: null, why: null, roundings: [] };
  const { because, difference } = found;
  const roundings = because.why === "another-rounding" ? [...because.roundings] : [];
  return { state: "differs", difference: totalDigits(difference), why: because.why, roundings };
}

/** What became of a deposit, as it is kept. Rounds: never. */
export function apiDepositEvent(event: Kept["deposited"][number]): z.output<typeof depositEventShape> {
  const { id, billId, deposit, kind, on, note, undoneAt } = event;
  return { id, billId, deposit, kind, amount: exactDigits(event.amount), on, note, undoneAt };
}

function apiFigures(bill: Kept, terms: BillTerms, figures: BillFigures): z.output<typeof billFiguresShape> {
  // Nothing is recorded for a day to come, so that all of it counts.
  const since = depositsOn(bill, figures, bill.deposited, LAST_DAY);
  return {
    subtotal: totalDigits(figures.subtotal),
    fees: figures.fees.map(apiBeside),
    deposits: figures.deposits.map(apiBeside),
    taxes: figures.taxes.map(({ component, amount }) => ({
      name: component.name,
      ratePercent: exactDigits(component.ratePercent),
      amount: totalDigits(amount),
    })),
    total: totalDigits(figures.total),
    due: totalDigits(figures.due),
    refundable: totalDigits(figures.refundable),
    rebates: totalDigits(figures.rebates),
    cost: totalDigits(figures.cost),
    givenBack: totalDigits(since.givenBack),
    forfeited: totalDigits(since.forfeited),
    held: totalDigits(since.held),
    reconciliation: apiReconciliation(reconciliation(bill, terms, figures)),
  };
}

function apiLine(
  line: Kept["lines"][number],
  at: number,
  { currency }: Kept,
  reckoned: Readonly<{ figures: BillFigures | null; shares: readonly LineShare[] | null }>,
): z.output<typeof billLineShape> {
  const read = reckoned.figures?.lines[at];
  const share = reckoned.shares?.[at];
  return {
    materialId: line.materialId,
    text: line.text,
    quantity: exactDigits(line.quantity),
    unit: line.unit,
    price: {
      amount: enteredDigits(line.price.amount, currency),
      per: { quantity: exactDigits(line.price.per.quantity), unit: line.price.per.unit },
    },
    discount: line.discount === null ? null : apiEither(line.discount),
    exemptFrom: [...line.exemptFrom],
    fees: line.fees.map(apiFee),
    returned: line.returned === null ? null : apiEither(line.returned),
    observationId: line.observationId,
    lotId: line.lotId,
    stockEventId: line.stockEventId,
    net: read === undefined ? null : totalDigits(read.net),
    tax: read === undefined ? null : totalDigits(read.tax),
    cost: share === undefined ? null : totalDigits(share.total),
  };
}

/** A bill as it is kept, with what it comes to. Rounds: figures as `billFigures` and `lineShares`, nothing else. */
export function apiBill(bill: Kept): z.output<typeof billShape> {
  const { terms } = bill;
  const figures = terms === null ? null : billFigures(bill, terms);
  const shares = terms === null || figures === null ? null : lineShares(bill, terms, figures);
  const entered = (amount: Decimal) => enteredDigits(amount, bill.currency);
  return {
    id: bill.id,
    kind: bill.kind,
    storeId: bill.storeId,
    on: bill.on,
    until: bill.until,
    currency: bill.currency,
    taxRegion: bill.taxRegion,
    taxIncluded: bill.taxIncluded,
    taxRounding: bill.taxRounding,
    shareBy: bill.shareBy,
    paidInCash: bill.paidInCash,
    lines: bill.lines.map((line, at) => apiLine(line, at, bill, { figures, shares })),
    fees: bill.fees.map(apiFee),
    deposits: bill.deposits.map((deposit) => ({ ...deposit, amount: entered(deposit.amount) })),
    rebates: bill.rebates.map((rebate) => ({ ...rebate, amount: entered(rebate.amount) })),
    printedTotal: bill.printedTotal === null ? null : entered(bill.printedTotal),
    paidHome: exactDigitsOrNull(bill.paidHome),
    anyQuantity: bill.anyQuantity,
    receivedOn: bill.receivedOn,
    storedAt: bill.storedAt,
    note: bill.note,
    deletedAt: bill.deletedAt,
    depositEvents: bill.deposited.map(apiDepositEvent),
    figures: terms === null || figures === null ? null : apiFigures(bill, terms, figures),
  };
}
