import type { TypedBill } from "../../lib/show/bill-so-far.ts";
import { rowsTyped, typed, typedAll, typedAmount, typedOrNull } from "../_forms/typed.ts";

/** The rows of a repeated group in which any of these fields is filled. */
function filled(form: FormData, group: string, fields: readonly string[]): number[] {
  return rowsTyped(form, group).filter((row) =>
    fields.some((field) => typedAll(form, `${group}.${row}.${field}`).length > 0),
  );
}

/** The rows of lines that are filled, by their numbers on the form. */
export function lineRows(form: FormData): number[] {
  return filled(form, "lines", ["materialId", "text", "quantity", "price.amount"]);
}

function namedRows(form: FormData, group: string): number[] {
  return filled(form, group, ["name", "amount", "percent"]);
}

/** A fault's path as the form calls it: rows left empty are not sent on, so places differ from row numbers. */
export function rowPath(path: string, form: FormData): string {
  const [group = "", place, ...rest] = path.split(".");
  if (path === "lines") return "lines.0.quantity";
  if (!["lines", "fees", "deposits", "rebates"].includes(group) || place === undefined) return path;
  const rows = group === "lines" ? lineRows(form) : namedRows(form, group);
  const field = rest.join(".").replace("returned.ofThisBill", "returned.lotId").replace("keepLot", "keep");
  return `${group}.${rows[Number(place)] ?? place}.${field}`;
}

/** An amount or a percent, whichever is filled; null: neither is. */
function either(form: FormData, at: string, locale: string) {
  const amount = typedAmount(form, `${at}.amount`, locale) ?? null;
  const percent = typedAmount(form, `${at}.percent`, locale) ?? null;
  return amount === null && percent === null ? null : { amount, percent };
}

/** The value of the choice "of this receipt" among the lots goods handed back are of. */
export const OF_THIS_BILL = "this";

/** Goods handed back: the fee kept, nothing where none is typed, and the lot they are of. */
function handedBack(form: FormData, at: string, locale: string) {
  const lot = typedOrNull(form, `${at}.lotId`);
  return {
    ...(either(form, at, locale) ?? { percent: "0", amount: null }),
    taxable: typed(form, `${at}.untaxed`) !== "yes",
    lotId: lot === OF_THIS_BILL ? null : lot,
    ofThisBill: lot === OF_THIS_BILL,
  };
}

/** Fees in the rows of a group: an amount or a percent each. */
function fees(form: FormData, group: string, locale: string) {
  return filled(form, group, ["name", "amount", "percent"]).map((row) => {
    const at = `${group}.${row}`;
    const shares = either(form, at, locale) ?? { amount: undefined, percent: null };
    return { name: typed(form, `${at}.name`) ?? "", ...shares, taxable: taxed(form, at) };
  });
}

function line(form: FormData, row: number, locale: string) {
  const at = `lines.${row}`;
  const keep = typedAll(form, `${at}.keep`);
  return {
    materialId: typedAll(form, `${at}.materialId`)[0] ?? null,
    text: typedOrNull(form, `${at}.text`),
    quantity: typedAmount(form, `${at}.quantity`, locale),
    unit: typed(form, `${at}.unit`),
    price: {
      amount: typedAmount(form, `${at}.price.amount`, locale),
      per: {
        quantity: typedAmount(form, `${at}.price.per.quantity`, locale) ?? "1",
        unit: typedOrNull(form, `${at}.price.per.unit`),
      },
    },
    discount: either(form, `${at}.discount`, locale),
    exemptFrom: typedAll(form, `${at}.exemptFrom`),
    fees: fees(form, `${at}.fees`, locale),
    returned: typed(form, `${at}.handedBack`) === "yes" ? handedBack(form, `${at}.returned`, locale) : null,
    keepPrice: keep.includes("price"),
    keepLot: keep.includes("lot"),
  };
}

function taxed(form: FormData, at: string): boolean {
  return typed(form, `${at}.taxable`) === "yes";
}

/** What the form of a bill sent, as an entry still to be checked; decimals as canonical text. */
export function typedBill(form: FormData, locale: string) {
  const kind = typed(form, "kind");
  const quote = kind === "quote";
  const notReceived = quote || typed(form, "notReceived") === "yes";
  const rows = (group: string) => namedRows(form, group).map((row) => `${group}.${row}`);
  const named = (at: string) => ({
    name: typed(form, `${at}.name`) ?? "",
    amount: typedAmount(form, `${at}.amount`, locale),
  });
  return {
    kind,
    storeId: typed(form, "storeId"),
    on: typed(form, "on"),
    until: quote ? typedOrNull(form, "until") : null,
    anyQuantity: quote && typed(form, "anyQuantity") === "yes",
    currency: typed(form, "currency"),
    taxRegion: typedOrNull(form, "taxRegion"),
    taxIncluded: typed(form, "taxIncluded") === "yes",
    taxRounding: typedOrNull(form, "taxRounding"),
    shareBy: typed(form, "shareBy"),
    paidInCash: typed(form, "paidInCash") === "yes",
    lines: lineRows(form).map((row) => {
      const typedLine = line(form, row, locale);
      return quote ? { ...typedLine, keepLot: false } : typedLine;
    }),
    fees: fees(form, "fees", locale),
    deposits: rows("deposits").map((at) => ({ ...named(at), taxable: taxed(form, at) })),
    rebates: rows("rebates").map(named),
    printedTotal: typedAmount(form, "printedTotal", locale) ?? null,
    paidHome: typedAmount(form, "paidHome", locale) ?? null,
    ...(notReceived ? { receivedOn: null } : {}),
    storedAt: typedOrNull(form, "storedAt"),
    note: typedOrNull(form, "note"),
  } satisfies TypedBill & Record<string, unknown>;
}
