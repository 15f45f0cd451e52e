import type { Fault, FaultCode } from "../../lib/fault.ts";
import type { FormFault } from "../_ui/form-state.ts";
import type { LogWords } from "./words.ts";

const SAID: Readonly<Partial<Record<FaultCode, keyof LogWords["wrong"]>>> = {
  missing: "missing",
  "until-required": "missing",
  "not-a-number": "notAnAmount",
  "not-positive": "notPositive",
  "too-large": "tooLarge",
  "too-many-places": "tooManyPlaces",
  "too-long": "tooLong",
  "not-a-day": "notADay",
  "day-too-early": "tooLongAgo",
  "day-ahead": "stillToCome",
  "days-reversed": "daysReversed",
  "minimum-above-maximum": "aboveMaximum",
};

/** What a field of the form is called, by its path. */
export function fieldName(path: string, words: LogWords): string {
  const names: Readonly<Record<string, string>> = {
    materialId: words.material,
    storeId: words.store,
    amount: words.amount,
    "per.quantity": words.per,
    seenOn: words.seenOn,
    from: words.from,
    until: words.until,
    minQuantity: words.minQuantity,
    maxQuantity: words.maxQuantity,
    packSize: words.packSize,
    paidFor: words.paidFor,
    freeWith: words.freeWith,
    "fees.0.amount": words.orderCharge,
    note: words.note,
    quantity: words.howMany,
    name: words.newName,
  };
  return names[path] ?? path;
}

/** Faults in the form's own words, each opening with the name of its field. */
export function faultTexts(faults: readonly Fault[], words: LogWords): FormFault[] {
  return faults.map(({ path, code }) => ({
    path,
    text: `${fieldName(path, words)}: ${words.wrong[SAID[code] ?? "other"]}`,
  }));
}
