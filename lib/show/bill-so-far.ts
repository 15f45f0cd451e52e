import { billEntry } from "../bills/bill-entry.ts";
import { isLocalDate } from "../calendar/local-date.ts";
import type { TaxRegion } from "../tax/region.ts";
import { taxOn } from "../tax/tax.ts";
import type { AisleFacts } from "./aisle-facts.ts";
import { aisleMaterial, aisleValuation } from "./aisle-price.ts";
import { type BillText, billText } from "./bill-text.ts";

/** What is typed of a bill, still to be checked: texts as billEntry takes them; parts may be missing or wrong. */
export type TypedBill = Readonly<{
  storeId?: string | null | undefined;
  /** Where it was delivered to, if not taxed at the store. */
  taxRegion?: string | null | undefined;
  on?: string | undefined;
  currency?: string | undefined;
  taxRounding?: string | null | undefined;
  taxIncluded: boolean;
  paidInCash: boolean;
  shareBy?: string | undefined;
  printedTotal?: string | null | undefined;
  lines: readonly object[];
  fees: readonly object[];
  deposits: readonly object[];
  rebates: readonly object[];
}>;

/** The figures of what can be read so far. rows: net by row as typed, null for one not readable yet. taxKnown: of place and day. */
export type BillSoFar = Readonly<{ text: BillText; rows: readonly (string | null)[]; taxKnown: boolean }>;

const NOBODY = "00000000-0000-4000-8000-000000000000";
const SAMPLE = {
  storeId: NOBODY,
  on: "2000-01-01",
  currency: "CAD",
  lines: [{ text: "x", quantity: "1", unit: "each", price: { amount: "1" } }],
};

function isReadable(part: object): boolean {
  return billEntry.safeParse({ ...SAMPLE, ...part }).success;
}

/** Where a bill is taxed: where it was delivered to, else at the chosen store, as far as the facts know the place. */
export function regionOfBill(
  facts: AisleFacts,
  storeId: string,
  deliveredTo: string | null,
): TaxRegion | undefined {
  const code = deliveredTo ?? facts.stores.find(({ id }) => id === storeId)?.taxRegion;
  return code === undefined ? undefined : aisleValuation(facts).regions.get(code);
}

/**
 * A bill as far as it is typed: lines, fees, deposits and rebates that can be read are reckoned, the others left out.
 * null: no line can be read yet. Rounds: as `billFigures`. Nothing is checked here that saving does not check again.
 */
export function billSoFar(typed: TypedBill, facts: AisleFacts, locale: string): BillSoFar | null {
  const materials = new Map(facts.materials.map((plain) => [plain.id, aisleMaterial(plain)]));
  const on = isLocalDate(typed.on) ? typed.on : facts.today;
  const region = regionOfBill(facts, typed.storeId ?? "", typed.taxRegion ?? null);
  const tax = region === undefined ? null : taxOn(region, on);
  const taxKnown = tax?.known === true;
  const components = tax?.known === true ? tax.components : [];
  const currency = isReadable({ currency: typed.currency }) ? typed.currency : facts.homeCurrency;
  const kept = (name: "fees" | "deposits" | "rebates") =>
    typed[name].filter((one) => isReadable({ [name]: [one] }));
  const whole = (lines: readonly object[]) =>
    billEntry.safeParse({
      storeId: NOBODY,
      on,
      currency,
      taxIncluded: typed.taxIncluded,
      taxRounding: typed.taxRounding ?? null,
      paidInCash: typed.paidInCash,
      shareBy: typed.shareBy,
      lines,
      fees: kept("fees"),
      deposits: kept("deposits"),
      rebates: kept("rebates"),
      printedTotal: isReadable({ printedTotal: typed.printedTotal }) ? typed.printedTotal : null,
    });
  const terms = { components, materials };
  const textOf = (lines: readonly object[]): BillText | null => {
    const read = whole(lines);
    if (!read.success) return null;
    return billText({ ...read.data, taxRounding: read.data.taxRounding ?? "per-bill" }, terms, locale);
  };
  const readable = typed.lines.map((line) => isReadable({ lines: [line] }) && textOf([line]) !== null);
  const text = textOf(typed.lines.filter((_, at) => readable[at]));
  if (text === null) return null;
  const nets = text.lines.map(({ net }) => net);
  return { text, rows: readable.map((read) => (read ? (nets.shift() ?? null) : null)), taxKnown };
}
