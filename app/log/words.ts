import type { PurchaseUnit, UnitCode } from "../../lib/measure/units.ts";
import { TERMS, type Terms } from "../../lib/prices/observation.ts";
import type { ComparisonBasis } from "../../lib/show/comparison-basis.ts";

/** The aisle form's own words: small, typed, without a library, because the form also works with no signal. */
export const LOG_WORDS = {
  en: {
    title: "Log a price",
    material: "Material",
    materialHint: "Any words, in any order",
    choose: "Choose one",
    noSuchMaterial: "No material with these words",
    store: "Store",
    amount: "Price on the tag",
    readAs: "Read as",
    notUnderstood: "Cannot tell this amount. Type it as on the tag, for example 42.97",
    per: "For how many",
    unit: "Of",
    asBought: "as it is bought",
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
    paidFor: "Buy so many",
    freeWith: "Get so many free",
    freeHint:
      "For “buy 2, get 1 free”: the tag’s price is for one. Log the price of one by itself too, if single ones are sold.",
    orderCharge: "Delivery, once per order",
    orderChargeName: "Delivery",
    note: "Note",
    keep: "Keep this price",
    keeping: "Keeping …",
    keepNothing: "Keep: none left",
    allIn: (amount: string, currency: string, unit: string) =>
      unit === "each" ? `${amount} ${currency} each, all in.` : `${amount} ${currency} per ${unit}, all in.`,
    over: (amount: string, store: string) => `${amount} over ${store}.`,
    under: (amount: string, store: string) => `${amount} under ${store}.`,
    same: (_amount: string, store: string) => `The same as ${store}.`,
    firstPrice: "No other price of it in force.",
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
    faults: "Not kept yet. Put these right:",
    kept: (store: string, material: string) => `Kept: ${material} at ${store}.`,
    undo: "Undo",
    undone: "Taken back. The price counts no more.",
    bringBack: "Bring it back",
    back: "Back again. The price counts.",
    cannot: "This could not be changed: it is no longer there.",
    meansTitle: "What this price means",
    lowestEver: (sightings: number, months: number) =>
      months > 0
        ? `The lowest of ${sightings} prices seen in ${months === 1 ? "a month" : `${months} months`}.`
        : "The lowest seen so far.",
    lowestIn: (months: number) =>
      months === 0
        ? "As low was seen within the last month."
        : `The lowest in ${months === 1 ? "a month" : `${months} months`}.`,
    severalStores: "several stores together",
    firstSighting: "The first price of it: nothing to hold it against yet.",
    underGoing: (amount: string, stores: number) =>
      `${amount} under the going price of ${stores === 1 ? "one store" : `${stores} stores`}.`,
    overGoing: (amount: string, stores: number) =>
      `${amount} over the going price of ${stores === 1 ? "one store" : `${stores} stores`}.`,
    atGoing: "At the going price.",
    underBest: (amount: string, store: string) => `${amount} each under ${store}, the best offer elsewhere.`,
    overBest: (amount: string, store: string) => `${amount} each over ${store}, the best offer elsewhere.`,
    sameBest: (_amount: string, store: string) => `The same as ${store}, the best offer elsewhere.`,
    paidUnder: (amount: string, paid: string) => `${amount} under what was last paid: ${paid}.`,
    paidOver: (amount: string, paid: string) => `${amount} over what was last paid: ${paid}.`,
    paidSame: (_amount: string, paid: string) => `The same as was last paid: ${paid}.`,
    paidWhat: (amount: string, day: string, projects: string) =>
      projects === "" ? `${amount} on ${day}` : `${amount} on ${day}, for ${projects}`,
    covers: (quantity: string, unit: string) => `It covers ${quantity} ${unit} of need.`,
    coversPart: (quantity: string, open: string, unit: string) =>
      `It covers ${quantity} of the ${open} ${unit} of need.`,
    allUnder: (quantity: string, amount: string, currency: string) =>
      `Buying all ${quantity} here is ${amount} ${currency} under the best offers elsewhere.`,
    allOver: (quantity: string, amount: string, currency: string) =>
      `Buying all ${quantity} here is ${amount} ${currency} over the best offers elsewhere.`,
    allSame: (quantity: string) => `Buying all ${quantity} here costs the same as elsewhere.`,
    noOffer: {
      lapsed: "It is no offer today: it has lapsed.",
      "not-yet": "It is no offer today: it begins later.",
      replaced: "A newer price at this store stands in its place.",
      "none-left":
        "Noted: none left at this store. Its other prices of this material count no more until one is seen again.",
      "too-old": "It is too old to count as an offer.",
      receipt: "A receipt is history, not an offer: it says what was paid.",
      "used-not-accepted": "It is a used one, and no project accepts used.",
      "before-import-charges":
        "Before import charges: until they are confirmed for this store it is never the best offer.",
      "nothing-left-of-it": "Nothing is left of this offer.",
      "archived-store": "This store is archived.",
      "tax-unknown": "It cannot be compared: the tax at this store on this day is not known.",
      "rate-unknown": "It cannot be compared: no exchange rate is recent enough.",
      "unit-not-convertible":
        "It cannot be compared: this unit cannot be read in the unit the material is bought by.",
      "region-unknown": "It cannot be compared: the tax region of this store is not known.",
      "store-unknown": "It cannot be compared: the store is not known.",
      "no-amount": "No amount was given.",
    },
    basis: ({ of, quantity, exact, unit, currency, back, taxes, day }: ComparisonBasis) =>
      [
        of === "each"
          ? "Each"
          : of === "one"
            ? `Per ${unitWord(unit, "1")}`
            : `For ${quantity} ${unitWord(unit, exact)}`,
        back === "none"
          ? "all in (tax included as cost)"
          : `all in (tax included as cost, but not the ${taxes} you get back)`,
        currency,
        `on ${day}; delivery and other charges per order apart.`,
      ].join(", "),
    usedCaution:
      "Reclaimed lumber has no current grade stamp, and may hide metal, lead paint or preservative. Structural reuse is for the local authority or an engineer.",
    boughtTitle: "Bought some of it?",
    boughtNote: "One tap records the lot at this price and sets it aside.",
    howMany: "How many",
    forWhat: "For",
    forNone: "No project: free stock",
    needLine: (project: string, open: string, unit: string, day: string) =>
      `${project}: ${open} ${unit} open, by ${day}`,
    boughtOn: "Bought on",
    bought: (quantity: string) => `Bought ${quantity} of it`,
    boughtSaving: "Recording …",
    boughtDone: (quantity: string, unit: string, material: string) =>
      `Recorded: ${quantity} ${unit} of ${material}.`,
    toLot: "See the lot",
    next: "Log the next price",
    noneLeft: "None left here",
    opening: "Opening what this phone has …",
    allSent: "Everything is sent.",
    waiting: (count: number, age: string) =>
      `${count === 1 ? "1 entry is" : `${count} entries are`} kept on this phone, waiting to be sent; the oldest for ${age}.`,
    figuresOf: (age: string) => `Figures as of ${age} ago.`,
    notReached: "No connection: it works all the same.",
    signedOut: "Nobody is signed in on this phone: what is logged is kept here until then.",
    signIn: "Sign in",
    neverReached:
      "No figures on this phone yet, and no connection. Prices can be logged all the same; what they mean is told later.",
    fetching: "Fetching figures …",
    inDemo: (name: string) => `This is ${name}, not your own workspace.`,
    nothingKnown: "What it means is told as soon as this phone has reached its server once.",
    newerBuild: "A newer version is here. It is used from the next time this page is opened.",
    needsScript:
      "This form works without a connection and therefore needs scripts. Without them, enter a receipt instead.",
    phoneFull: "Not kept: this phone has no room left, or does not let this page keep anything.",
    clockWrong: "This phone’s clock cannot be right. Which day is it?",
    didYouMean: (amount: string) => `Ten times off what is known. Did you mean ${amount}?`,
    meant: (amount: string) => `Yes, ${amount}`,
    asTyped: (amount: string) => `No, ${amount} is right`,
    stillSo: (amount: string, day: string) =>
      `Your last shelf price here was ${amount}, ${day}: still so before the special`,
    makeMaterial: (name: string) => `Make “${name}” a new material`,
    newMaterial: "Not in the list? Add a material",
    newMaterialTitle: "A new material",
    newStore: "Add a store",
    newStoreTitle: "A new store",
    newName: "Name",
    boughtBy: "Bought by the",
    taxRegion: "Tax region",
    fromCatalogue: "From the catalogue, with its sizes:",
    makeIt: "Add and go on",
    never: "Leave it",
    visit: (store: string, day: string) => `At ${store}, ${day}`,
    onPhone: "waits",
    refusedShort: "refused",
    toCheck: (left: number, all: number) =>
      left === 0 ? `To check here today: all ${all} done` : `To check here today: ${left} of ${all}`,
    checkLapses: (day: string, rests: string) => `Ends ${day}; ${rests} still to buy at it.`,
    checkStale: (days: number, rests: string) => `Price ${days} days old; ${rests} rests on it.`,
    checkUnseen: (quantity: string) => `${quantity} to buy, and no price here yet.`,
    logIt: "Log it",
    refusedTitle: (count: number) =>
      count === 1
        ? "One entry was refused, and is still here"
        : `${count} entries were refused, and are still here`,
    sendAgain: "Send again",
    throwAway: "Throw it away",
    thrownAway: (what: string) => `Thrown away: ${what}.`,
    mendField: {
      amount: "Price on the tag",
      seenOn: "Seen on",
      name: "Name",
      storeId: "Store",
      materialId: "Material",
      quantity: "How many",
    },
    kinds: {
      material: "New material",
      catalogued: "New material from the catalogue",
      store: "New store",
      price: "Price",
      correction: "Correction",
      "take-back": "Price taken back",
      bought: "Bought",
      draw: "Drawn",
    },
    wrong: {
      missing: "fill this in",
      notAnAmount: "this is not an amount",
      notPositive: "must be more than 0",
      tooLarge: "is too large",
      tooManyPlaces: "has too many decimal places",
      tooLong: "is too long",
      notADay: "this is not a day",
      tooLongAgo: "this day is too long ago",
      stillToCome: "this day is still to come",
      daysReversed: "is before the first day",
      aboveMaximum: "is more than the most that can be had",
      other: "cannot be kept",
    },
    enterReceipt: "Enter a whole receipt",
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

export const TERMS_CHOICES: readonly Readonly<{ value: Terms; label: string }>[] = TERMS.map((value) => ({
  value,
  label: TERMS_WORDS[value],
}));

/** Measures a shelf price is compared by, in the words of a price tag. */
export const MEASURE_WORDS: Readonly<Partial<Record<UnitCode, string>>> = {
  "square-foot": "per square foot",
  "square-metre": "per square metre",
  "linear-foot": "per linear foot",
  "board-foot": "per board foot",
  piece: "per piece",
  pound: "per pound",
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
  "msf-3-8": ["thousand square feet, 3/8 in basis", "thousand square feet, 3/8 in basis"],
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
