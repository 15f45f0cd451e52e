import { shareOfPercent } from "../../lib/show/share-typed.ts";
import { rowsTyped, typed, typedAll, typedAmount, typedOrNull } from "../_forms/typed.ts";

function fees(form: FormData, locale: string) {
  return rowsTyped(form, "fees")
    .map((number) => `fees.${number}`)
    .filter((at) => typed(form, `${at}.name`) !== undefined || typed(form, `${at}.amount`) !== undefined)
    .map((at) => ({
      name: typed(form, `${at}.name`) ?? "",
      amount: typedAmount(form, `${at}.amount`, locale) ?? null,
      basis: typed(form, `${at}.basis`) ?? "order",
      taxable: typed(form, `${at}.taxable`) === "yes",
    }));
}

/** The receipt as typed; null where the price of a sighting is copied. */
function paid(form: FormData, locale: string) {
  if (typed(form, "observationId") !== undefined) return null;
  return {
    amount: typedAmount(form, "paid.amount", locale),
    currency: typed(form, "paid.currency"),
    taxIncluded: typed(form, "paid.taxIncluded") === "yes",
    taxRegion: typedOrNull(form, "paid.taxRegion"),
    fees: fees(form, locale),
  };
}

/** Payments of an order; a row without a day is of the day it was ordered. */
function payments(form: FormData, locale: string) {
  return rowsTyped(form, "payments")
    .map((number) => `payments.${number}`)
    .filter((at) => typed(form, `${at}.amount`) !== undefined)
    .map((at) => ({
      amount: typedAmount(form, `${at}.amount`, locale),
      on: typed(form, `${at}.on`) ?? typed(form, "orderedOn"),
    }));
}

/** What was agreed otherwise than the store usually does: only what was filled in is said. */
function agreed(form: FormData, locale: string) {
  const said = {
    expectedOn: typed(form, "expectedOn"),
    returnableUntil: typed(form, "returnableUntil"),
    adjustableUntil: typed(form, "adjustableUntil"),
    restockingPercent: typedAmount(form, "restockingPercent", locale),
    givenFree: typed(form, "givenFree"),
    otherCurrency: typed(form, "otherCurrency"),
  };
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined));
}

/** What the form of a lot sent, as an entry still to be checked; decimals as canonical text. */
export function typedLot(form: FormData, locale: string) {
  const condition = typedAmount(form, "condition", locale);
  const received = typed(form, "notReceived") === "yes" ? null : typed(form, "acquiredOn");
  return {
    materialId: typedAll(form, "materialId")[0],
    origin: typed(form, "origin"),
    storeId: typedOrNull(form, "storeId"),
    terms: typedOrNull(form, "terms"),
    observationId: typedOrNull(form, "observationId"),
    quantity: typedAmount(form, "quantity", locale),
    paid: paid(form, locale),
    paidHome: typedAmount(form, "paidHome", locale) ?? null,
    orderedOn: typed(form, "orderedOn"),
    ...(received === undefined ? {} : { acquiredOn: received }),
    ...(condition === undefined ? {} : { condition: shareOfPercent(condition) }),
    payments: payments(form, locale),
    ...agreed(form, locale),
    storedAt: typedOrNull(form, "storedAt"),
    note: typedOrNull(form, "note"),
  };
}
