import { getTranslations } from "next-intl/server";

const FIELD_WORDS = [
  "material",
  "noSuchMaterial",
  "choose",
  "from",
  "fromHint",
  "project",
  "hours",
  "hourlyRate",
  "hourlyRateHint",
  "hauling",
  "purchasePrice",
  "purchasePriceHint",
  "currency",
  "conditionPercent",
  "conditionHint",
  "tally",
  "tallyHint",
  "tallyRow",
  "pieces",
  "length",
  "addRow",
  "quantity",
  "quantityHint",
  "on",
  "storedAt",
  "note",
] as const;
export type SalvageWords = Readonly<Record<(typeof FIELD_WORDS)[number], string>>;

/** The words of the fields of salvage in the language of the request. */
export async function salvageWords(): Promise<SalvageWords> {
  const t = await getTranslations("salvage");
  return Object.fromEntries(FIELD_WORDS.map((word) => [word, t(word)])) as SalvageWords;
}
