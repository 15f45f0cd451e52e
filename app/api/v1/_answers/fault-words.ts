import type { Fault, FaultCode } from "../../../../lib/fault.ts";

/** Every fault in the words of the interface: for whoever writes the program that calls it. */
export const FAULT_WORDS: Readonly<Record<FaultCode, string>> = {
  missing: "is required",
  "not-text": 'must be text; write decimals as text too, such as "41.98"',
  "too-long": "is longer than allowed",
  "not-a-number": 'must be plain digits with a point, such as "1049.50"',
  "not-positive": "must be more than zero",
  negative: "must not be below zero",
  "too-large": "is larger than allowed",
  "too-many-places": "has more decimal places than allowed",
  "not-a-day": "must be a day that exists, written YYYY-MM-DD",
  "day-too-early": "must be 1990-01-01 or later",
  "day-ahead": "lies ahead of the workspace's today",
  "days-reversed": "must not be before the first day",
  "unknown-currency": "must be an ISO 4217 currency code, such as CAD",
  "unknown-unit": "is not a known unit",
  "unit-not-convertible": "cannot be converted with the dimensions this material has",
  "unknown-choice": "is not one of the allowed values",
  "unknown-field": "is not a field of this request",
  "unknown-region": "is not a tax region of this workspace",
  "unknown-time-zone": "must be an IANA time zone, such as America/Halifax",
  "not-an-id": "must be a UUID",
  "not-there": "names something that is not there",
  archived: "is archived; restore it first",
  "percent-out-of-range": "is outside of the allowed range",
  "minimum-above-maximum": "must not be more than the maximum",
  "until-required": "is required for a quote",
  "amount-not-expected": "must not be given here",
  "free-only-for-salvage": "may be zero only for what was salvaged or left over",
  "more-than-free": "is more than is free",
  "more-than-allocated": "is more than is allocated to this requirement",
  "event-in-the-way": "is contradicted by something recorded later; undo that first",
  "before-acquisition": "is before the lot was acquired",
  "not-received-yet": "is more than has been received by that day",
  "tax-unknown": "has no known tax on that day",
  "rate-unknown": "has no exchange rate on that day",
  "name-taken": "is taken by another one",
  "already-closed": "is closed already",
  "wrong-material": "is of another material",
  "not-an-object": "must be a JSON object",
  "not-a-list": "must be a JSON array",
  "too-many": "has more entries than allowed",
  "not-yes-or-no": "must be true or false",
  "not-a-size": 'must be a number and a unit, such as "48 in"',
  "same-currency": "must differ from the base currency",
  "already-in-use": "cannot change any more: it is in use",
  "used-id": "was accepted before with other content",
  "not-a-length": 'must be a length, such as "8 ft 3-1/2 in", "92 5/8" or "2440 mm"',
  "length-unit-missing": "has a last number without a unit",
  "mixed-units": "is in another unit system than the entry",
  "comma-unclear": "has a comma that could mean thousands or decimals",
  "fraction-unclear": "has a fraction of a whole or more after a whole number",
  "inches-past-a-foot": "has twelve inches or more after feet",
  "not-an-area": 'must be an area, such as "320" or "320 sq ft"',
  "not-a-slope": 'must be a slope, such as "4/12" or "4 in 12"',
  "slope-flat": "must be above zero; take a flat roof as an area",
  "slope-too-steep": "must not be more than 24 in 12",
  "larger-than-wall": "is larger than the surface it is in",
  "not-whole": "must be a whole number",
  "cover-too-wide": "must be less than the overall width",
  "not-a-triangle": "cannot close a triangle",
  "wing-too-wide": "must be less than the length of the main part",
  "no-room-for-studs": "leaves no room for studs between the plates",
  "alternative-wrong-kind": "is of another kind than the required material",
  "alternative-thinner": "is thinner or of a smaller nominal size than the required material",
  "alternative-lower-grade": "is of a lower grade than the required material",
  "alternative-wrong-hand": "is of another hand than the required material",
  "alternative-wrong-jamb": "has another jamb depth than the required material",
  "alternative-wrong-size": "is of another size than the required material",
  "alternative-wrong-treatment": "lacks the treatment of the required material",
  "alternative-not-comparable": "cannot be compared with the required material by what is known of both",
  "stands-in-elsewhere": "would no longer do for a requirement that names it",
  "weight-unknown": "has no known weight to share by",
};

/** A fault in an answer: the field first, so that the message can stand alone. */
export type SpokenFault = Readonly<{
  path: string;
  code: FaultCode;
  message: string;
  values?: Readonly<Record<string, string>>;
}>;

/** A fault with its words. */
export function spoken(fault: Fault): SpokenFault {
  const values = fault.values === undefined ? {} : { values: fault.values };
  const message = `${fault.path === "" ? "the request" : fault.path} ${FAULT_WORDS[fault.code]}`;
  return { path: fault.path, code: fault.code, message, ...values };
}
