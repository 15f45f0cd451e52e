import { getTranslations } from "next-intl/server";

/** Words of a lot's fields, as `stock` in the message file has them. */
const KEYS = [
  "material",
  "noSuchMaterial",
  "choose",
  "origin",
  "howMany",
  "store",
  "storeHint",
  "noStore",
  "paid",
  "paidHint",
  "currency",
  "tax",
  "taxIn",
  "taxOut",
  "orderedOn",
  "forProject",
  "forNone",
  "storedAt",
  "storedAtHint",
  "details",
  "acquiredOn",
  "acquiredOnHint",
  "onOrder",
  "notReceived",
  "terms",
  "termsHint",
  "notSaid",
  "paidHomeHint",
  "taxRegion",
  "taxRegionHint",
  "ofTheStore",
  "fees",
  "feesHint",
  "feeRow",
  "feeName",
  "feeAmount",
  "feeBasis",
  "feeOrder",
  "feeUnit",
  "feeTaxed",
  "feeTaxable",
  "condition",
  "conditionHint",
  "note",
  "givenFree",
  "givenFreeHint",
  "otherCurrency",
  "otherCurrencyHint",
  "agreedTitle",
  "agreedHint",
  "expectedOn",
  "returnableUntil",
  "adjustableUntil",
  "restockingPercent",
  "payments",
  "paymentsHint",
  "paymentRow",
  "paymentAmount",
  "paymentOn",
] as const;

export type LotWords = Readonly<Record<(typeof KEYS)[number] | "paidHome", string>>;

/** The words of a lot's fields in the language of the request. */
export async function lotWords(currency: string): Promise<LotWords> {
  const t = await getTranslations("stock");
  const words = Object.fromEntries(KEYS.map((key) => [key, t(key)])) as Record<(typeof KEYS)[number], string>;
  return { ...words, paidHome: t("paidHome", { currency }) };
}
