import type { Bill, BilledFee, BilledLine, Deposit, HandedBack } from "../../lib/bills/bill.ts";
import { type BillFigures, type BillTerms, billFigures } from "../../lib/bills/bill-figures.ts";
import { type Decimal, decimal } from "../../lib/decimal.ts";
import type { Material } from "../../lib/materials/material.ts";
import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { TaxComponent } from "../../lib/tax/region.ts";
import { component, day } from "./price-example.ts";

type Written = string | number | Decimal;

export const GST = component("GST", "5");
export const QST = component("QST", "9.975");
export const HST = component("HST", "13");
export const PST = component("PST", "7", { recoverable: false });

/** A line of something named: so many at a price each. */
export function lineAt(price: Written, quantity: Written = 1, given: Partial<BilledLine> = {}): BilledLine {
  return {
    materialId: null,
    text: "something",
    quantity: decimal(quantity),
    unit: "each",
    price: { amount: decimal(price), per: { quantity: decimal(1), unit: given.unit ?? "each" } },
    discount: null,
    exemptFrom: [],
    fees: [],
    returned: null,
    keepPrice: false,
    keepLot: false,
    ...given,
  };
}

/** "3 for 20": what so many of a unit cost together. */
export function priceFor(
  amount: Written,
  quantity: Written,
  unit: PurchaseUnit = "each",
): BilledLine["price"] {
  return { amount: decimal(amount), per: { quantity: decimal(quantity), unit } };
}

export function billedFee(name: string, given: Partial<BilledFee>): BilledFee {
  return { name, amount: null, percent: null, taxable: true, ...given };
}

/** Goods of no lot handed back, nothing kept by the store, unless it is said. */
export function handedBack(given: Partial<HandedBack> = {}): HandedBack {
  return { amount: null, percent: null, taxable: true, lotId: null, ofThisBill: false, ...given };
}

export function deposit(amount: Written, given: Partial<Deposit> = {}): Deposit {
  return { name: "pallets", amount: decimal(amount), taxable: false, forfeited: false, ...given };
}

/** A receipt of a day in 2024 in Canadian dollars, tax added per bill. */
export function billOf(lines: readonly BilledLine[], given: Partial<Bill> = {}): Bill {
  return {
    kind: "receipt",
    storeId: "near",
    on: day("2024-06-03"),
    until: null,
    currency: "CAD",
    taxRegion: null,
    taxIncluded: false,
    taxRounding: "per-bill",
    shareBy: "value",
    paidInCash: false,
    lines,
    fees: [],
    deposits: [],
    rebates: [],
    printedTotal: null,
    paidHome: null,
    anyQuantity: false,
    receivedOn: day("2024-06-03"),
    storedAt: null,
    note: null,
    ...given,
  };
}

export function billTerms(
  components: readonly TaxComponent[] = [],
  materials: readonly Material[] = [],
): BillTerms {
  return { components, materials: new Map(materials.map((one) => [one.id, one])) };
}

/** A bill's figures. Throws: {Error} when a line cannot be read, which is asked for by itself. */
export function figuresOf(bill: Bill, terms: BillTerms = billTerms()): BillFigures {
  const figures = billFigures(bill, terms);
  if (figures === null) throw new Error("a line of this bill cannot be read in its unit");
  return figures;
}

/** Amounts as money is written, to the cent. */
export function cents(values: readonly { amount: Decimal }[]): string[] {
  return values.map(({ amount }) => amount.toFixed(2));
}
