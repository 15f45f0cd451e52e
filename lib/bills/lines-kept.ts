import { ONE } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";
import type { Paid } from "../stock/lot.ts";
import type { LotEntry } from "../stock/lot-entry.ts";
import { apportion } from "./apportion.ts";
import type { Bill, BilledLine } from "./bill.ts";
import { type BillFigures, type BillTerms, billFigures } from "./bill-figures.ts";
import { linePaid } from "./line-paid.ts";
import { type GoodsReturned, goodsReturned, type Recovered } from "./line-refund.ts";
import { type PriceSeen, priceSeen } from "./line-seen.ts";
import { type LineShare, lineShares, quantityBought } from "./line-shares.ts";

/** What is kept of one line beside the document. returned: goods that leave a lot. */
export type LineKept = Readonly<{
  seen: PriceSeen | null;
  lot: LotEntry | null;
  returned: GoodsReturned | null;
}>;
const NOTHING: LineKept = { seen: null, lot: null, returned: null };

/** Who buys: their currency, and which components they get back on the bill's day. */
export type Buyer = Readonly<{ homeCurrency: CurrencyCode; recovered: Recovered }>;

/** What the card was charged, laid on the lines as the bill is: deposits that come back and rebates have their part too. */
function homeParts(
  bill: Bill,
  { total, refundable, rebates }: BillFigures,
  shares: readonly LineShare[],
  homeCurrency: CurrencyCode,
): readonly (Money | null)[] {
  const { paidHome } = bill;
  if (paidHome === null || total.amount.isZero()) return shares.map(() => null);
  const parts = [...shares.map((share) => share.total), refundable, rebates];
  return apportion(
    money(paidHome, homeCurrency),
    parts.map(({ amount }) => amount.times(paidHome).dividedBy(total.amount)),
  ).slice(0, shares.length);
}

function lotOf(
  bill: Bill,
  line: BilledLine,
  material: Material,
  { paid, home }: { paid: Paid; home: Money | null },
): LotEntry | null {
  const quantity = quantityBought(line, material);
  if (quantity === null) return null;
  return {
    materialId: material.id,
    origin: "bought",
    storeId: bill.storeId,
    terms: null,
    observationId: null,
    quantity,
    paid: {
      ...paid,
      exemptFrom: [...paid.exemptFrom],
      fees: [...paid.fees],
      taxes: paid.taxes === null ? null : [...paid.taxes],
    },
    paidHome: home?.amount.greaterThan(0) === true ? home.amount : null,
    orderedOn: bill.on,
    receipts: bill.receivedOn === null ? [] : [{ quantity, on: bill.receivedOn }],
    payments: [],
    condition: ONE,
    storedAt: bill.storedAt,
    note: null,
  };
}

/**
 * What a bill's lines are kept as: a price seen and a lot each, where the line says so; goods handed back leave theirs
 * (`goodsReturned`). Lots are paid in full on the bill's day and bear their shares of it (`linePaid`); what the card was charged at home is shared as the bill is.
 * Units: the bill's currency, home currency for paidHome. Rounds: as `billFigures` and `lineShares`; paidHome by the
 * largest remainder. null: a line cannot be read in its unit, or shared by a weight not known (`billFaults` names them).
 */
export function linesKept(
  bill: Bill,
  terms: BillTerms,
  { homeCurrency, recovered }: Buyer,
): LineKept[] | null {
  const figures = billFigures(bill, terms);
  const shares = figures === null ? null : lineShares(bill, terms, figures);
  if (figures === null || shares === null) return null;
  const homes = homeParts(bill, figures, shares, homeCurrency);
  return bill.lines.map((line, at): LineKept => {
    const material = terms.materials.get(line.materialId ?? "");
    const [read, share] = [figures.lines[at], shares[at]];
    if (material === undefined || read === undefined || share === undefined) return NOTHING;
    const quantity = quantityBought(line, material);
    const seen = line.keepPrice ? priceSeen(bill, line, read, quantity) : null;
    const returned =
      quantity === null ? null : goodsReturned(bill, line, { read, share, quantity }, recovered);
    if (!line.keepLot) return { seen, lot: null, returned };
    const paid = linePaid(bill, read, share);
    return { seen, lot: lotOf(bill, line, material, { paid, home: homes[at] ?? null }), returned };
  });
}
