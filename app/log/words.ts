import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { Terms } from "../../lib/prices/observation.ts";

/** The aisle form's own words: small, typed, without a library, because the form will also work with no signal. */
export const LOG_WORDS = {
  en: {
    title: "Log a price",
    material: "Material",
    materialHint: "Any words, in any order",
    choose: "Choose one",
    noSuchMaterial: "No material with these words",
    store: "Store",
    amount: "Price on the tag",
    understood: (amount: string) => `Read as ${amount}`,
    notUnderstood: "Cannot read this as an amount. Type it as on the tag, for example 42.97",
    per: "For how many",
    unit: "of",
    tax: "Tax",
    taxOut: "Before tax",
    taxIn: "Tax included",
    terms: "Terms",
    more: "More about this price",
    seenOn: "Seen on",
    from: "From",
    until: "Until, last day",
    minQuantity: "From how many on",
    maxQuantity: "No more than",
    packSize: "Only in packs of",
    note: "Note",
    keep: "Keep this price",
    keeping: "Keeping …",
    keepNothing: "Keep: none left",
    allIn: (amount: string, unit: string) => `${amount} all in, each ${unit}.`,
    over: (amount: string, store: string) => `${amount} over ${store}.`,
    under: (amount: string, store: string) => `${amount} under ${store}.`,
    same: (store: string) => `The same as ${store}.`,
    firstPrice: "No other price of it in force.",
    underGoing: (amount: string) => `${amount} under the going price.`,
    overGoing: (amount: string) => `${amount} over the going price.`,
    paid: (amount: string, day: string, project: string | null) =>
      project === null ? `Last paid ${amount}, ${day}.` : `Last paid ${amount}, ${day}, for ${project}.`,
    open: (quantity: string, unit: string) => `${quantity} ${unit} still to buy.`,
    noNeed: "No job needs it now.",
    unknown: {
      "tax-unknown": "All in not known: the tax at this store on this day is not known.",
      "rate-unknown": "All in not known: no exchange rate recent enough.",
      "unit-not-convertible": "All in not known: this unit cannot be read in the unit it is bought by.",
      "region-unknown": "All in not known: the tax region of this store is not known.",
      "store-unknown": "All in not known: choose a store.",
      "no-amount": "No amount yet.",
    },
    importCharges: "Before import charges: they are not confirmed for this store.",
    notKept: "Not kept: the program did not answer. What you typed is still here; try again.",
    faults: "Not kept yet. See the marked fields.",
  },
} as const;

export type LogWords = (typeof LOG_WORDS)["en"];

/** The words for a locale; English where there are none yet. */
export function logWords(_locale: string): LogWords {
  return LOG_WORDS.en;
}

/** Terms as a person in a shop says them. */
export const TERMS_WORDS: Readonly<Record<Terms, string>> = {
  shelf: "Shelf price",
  special: "Special",
  clearance: "Clearance",
  "quantity-break": "Price for many",
  quote: "Quote",
  used: "Used or salvaged",
  paid: "Paid (receipt)",
  "none-left": "None left",
};

const UNIT_WORDS: Readonly<Record<PurchaseUnit, readonly [string, string]>> = {
  sheet: ["sheet", "sheets"],
  piece: ["piece", "pieces"],
  each: ["each", "each"],
  bundle: ["bundle", "bundles"],
  roll: ["roll", "rolls"],
  bag: ["bag", "bags"],
  box: ["box", "boxes"],
  "linear-foot": ["linear foot", "linear feet"],
  "linear-metre": ["linear metre", "linear metres"],
  "square-foot": ["square foot", "square feet"],
  "square-metre": ["square metre", "square metres"],
  square: ["square (100 sq ft)", "squares (100 sq ft)"],
  "board-foot": ["board foot", "board feet"],
  mbf: ["thousand board feet", "thousand board feet"],
  msf: ["thousand square feet", "thousand square feet"],
  "cubic-foot": ["cubic foot", "cubic feet"],
  "cubic-yard": ["cubic yard", "cubic yards"],
  "cubic-metre": ["cubic metre", "cubic metres"],
  pound: ["pound", "pounds"],
  kilogram: ["kilogram", "kilograms"],
};

/** A unit's name for a quantity in decimal text: one sheet, 2 sheets. */
export function unitWord(unit: PurchaseUnit, quantity: string): string {
  const [one, many] = UNIT_WORDS[unit];
  return quantity === "1" ? one : many;
}
