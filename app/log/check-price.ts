import { isLocalDate, type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, ONE } from "../../lib/decimal.ts";
import type { Fault, FaultCode } from "../../lib/fault.ts";
import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { CurrencyCode } from "../../lib/money/currencies.ts";
import { packOfFree } from "../../lib/prices/free-with-bought.ts";
import type { Terms } from "../../lib/prices/observation.ts";

/** What was typed: amounts as decimal text where they could be read, else as typed; undefined: left empty. */
export type TypedPrice = Readonly<{
  materialId: string | undefined;
  storeId: string | undefined;
  terms: Terms;
  amount: string | undefined;
  currency: CurrencyCode;
  per: string | undefined;
  unit: PurchaseUnit;
  taxIncluded: boolean;
  seenOn: string | undefined;
  from: string | undefined;
  until: string | undefined;
  minQuantity: string | undefined;
  maxQuantity: string | undefined;
  packSize: string | undefined;
  paidFor: string | undefined;
  freeWith: string | undefined;
  charge: string | undefined;
  note: string | undefined;
}>;

const FIRST_DAY = "1990-01-01";
const LARGEST = decimal("1000000000");
const PLACES = 6;
const LONGEST_NUMBER = 40;
const LONGEST_NOTE = 2000;

/** The fault of an amount above zero, by the same limits as the server's; null when it is one. */
function amountFault(text: string): FaultCode | null {
  if (text.length > LONGEST_NUMBER) return "too-long";
  if (!/^-?\d+(\.\d+)?$/.test(text)) return "not-a-number";
  const value = decimal(text);
  if (value.isZero() || value.isNegative()) return "not-positive";
  if (value.greaterThan(LARGEST)) return "too-large";
  return value.decimalPlaces() > PLACES ? "too-many-places" : null;
}

function dayFault(text: string): FaultCode | null {
  if (!isLocalDate(text)) return "not-a-day";
  return text < FIRST_DAY ? "day-too-early" : null;
}

function* faultsIn(typed: TypedPrice, today: LocalDate): Generator<Fault> {
  const one = (path: string, text: string | undefined, fault: (text: string) => FaultCode | null) => {
    const code = text === undefined ? null : fault(text);
    return code === null ? [] : [{ path, code }];
  };
  const missing = (path: string, text: string | undefined) =>
    text === undefined ? [{ path, code: "missing" as const }] : [];
  const { terms } = typed;
  yield* missing("materialId", typed.materialId);
  yield* missing("storeId", typed.storeId);
  yield* missing("seenOn", typed.seenOn);
  yield* one("seenOn", typed.seenOn, dayFault);
  if (isLocalDate(typed.seenOn) && typed.seenOn > plusDays(today, 1))
    yield { path: "seenOn", code: "day-ahead" };
  if ((typed.note?.length ?? 0) > LONGEST_NOTE) yield { path: "note", code: "too-long" };
  if (terms === "none-left") return;
  yield* missing("amount", typed.amount);
  yield* one("amount", typed.amount, amountFault);
  yield* one("per.quantity", typed.per, amountFault);
  yield* one("from", typed.from, dayFault);
  yield* one("until", typed.until, dayFault);
  for (const path of ["minQuantity", "maxQuantity", "packSize"] as const)
    yield* one(path, typed[path], amountFault);
  yield* one("fees.0.amount", typed.charge, amountFault);
  if ((typed.paidFor ?? typed.freeWith) !== undefined)
    for (const path of ["paidFor", "freeWith"] as const) {
      yield* missing(path, typed[path]);
      yield* one(path, typed[path], amountFault);
    }
  if (isReversed(typed.from, typed.until)) yield { path: "until", code: "days-reversed" };
  if (terms === "quote" && typed.until === undefined) yield { path: "until", code: "until-required" };
  if (terms === "quantity-break") yield* missing("minQuantity", typed.minQuantity);
  if (isAbove(typed.minQuantity, typed.maxQuantity))
    yield { path: "minQuantity", code: "minimum-above-maximum" };
}

function isReversed(from: string | undefined, until: string | undefined): boolean {
  if (from === undefined || until === undefined) return false;
  return dayFault(from) === null && dayFault(until) === null && from > until;
}

function isAbove(low: string | undefined, high: string | undefined): boolean {
  if (low === undefined || high === undefined || amountFault(low) !== null || amountFault(high) !== null)
    return false;
  return decimal(low).greaterThan(high);
}

/** Every fault of a typed price, in the order of the fields; today: the phone's, in the workspace's zone. */
export function faultsOfTyped(typed: TypedPrice, today: LocalDate): Fault[] {
  return [...faultsIn(typed, today)];
}

/** What so much costs as the tag says it, its free ones in it. */
function priced(typed: TypedPrice): { amount: Decimal; per: Decimal; packSize: string | undefined } {
  const tag = {
    amount: decimal(typed.amount ?? "0"),
    per: typed.per === undefined ? ONE : decimal(typed.per),
  };
  if (typed.paidFor === undefined || typed.freeWith === undefined)
    return { ...tag, packSize: typed.packSize };
  const pack = packOfFree(tag, { paid: decimal(typed.paidFor), free: decimal(typed.freeWith) });
  return { ...pack, packSize: typed.packSize ?? pack.packSize.toFixed() };
}

/**
 * A typed price without faults as the entry that is sent. "Buy 2, get 1 free" is a special beside the shelf price; what is
 * not said is left out, and "none left" has no price at all.
 */
export function entryOfTyped(typed: TypedPrice, chargeName: string) {
  const { materialId, storeId, seenOn, terms, note, charge } = typed;
  const common = { materialId, storeId, seenOn, terms, note };
  if (terms === "none-left") return common;
  const { amount, per, packSize } = priced(typed);
  const free = typed.paidFor !== undefined && terms === "shelf";
  return {
    ...common,
    terms: free ? "special" : terms,
    amount: amount.toFixed(),
    currency: typed.currency,
    per: { quantity: per.toFixed(), unit: typed.unit },
    taxIncluded: typed.taxIncluded,
    from: typed.from,
    until: typed.until,
    minQuantity: typed.minQuantity,
    maxQuantity: typed.maxQuantity,
    packSize,
    fees:
      charge === undefined
        ? []
        : [{ name: chargeName, amount: charge, basis: "order" as const, taxable: true }],
  };
}
export type PriceEntrySent = ReturnType<typeof entryOfTyped>;
