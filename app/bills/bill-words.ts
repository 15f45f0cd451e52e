import { getTranslations } from "next-intl/server";

/** Words of a bill's fields and of its running totals, as `bills` in the message file has them; "{…}" is filled in the browser. */
const KEYS = [
  "kind",
  "receipt",
  "quote",
  "store",
  "chooseStore",
  "on",
  "until",
  "anyQuantity",
  "anyQuantityYes",
  "lines",
  "linesHint",
  "line",
  "addLine",
  "material",
  "noSuchMaterial",
  "choose",
  "text",
  "textHint",
  "quantity",
  "unit",
  "price",
  "lineMore",
  "per",
  "perHint",
  "perUnit",
  "sameUnit",
  "discountPercent",
  "discountAmount",
  "exempt",
  "handedBack",
  "handedBackYes",
  "restocking",
  "restockingAmount",
  "restockingUntaxed",
  "restockingUntaxedYes",
  "ofLot",
  "ofLotHint",
  "ofNoLot",
  "ofThisBill",
  "lineFee",
  "feeEach",
  "feePercent",
  "feesOfAll",
  "taxing",
  "deliveredTo",
  "deliveredToHint",
  "atTheStore",
  "barMet",
  "barOff",
  "keep",
  "keepPrice",
  "keepLot",
  "lineComes",
  "currency",
  "tax",
  "taxIn",
  "taxOut",
  "taxRounding",
  "taxRoundingHint",
  "fees",
  "fee",
  "feesHint",
  "name",
  "amount",
  "taxed",
  "taxedYes",
  "shareBy",
  "deposits",
  "deposit",
  "depositsHint",
  "rebates",
  "rebate",
  "rebatesHint",
  "paying",
  "cash",
  "cashYes",
  "paidHomeHint",
  "receiving",
  "notReceived",
  "storedAt",
  "note",
  "printedTotal",
  "printedTotalHint",
  "totals",
  "subtotal",
  "lineFees",
  "total",
  "due",
  "cost",
  "nothingYet",
  "taxNotKnown",
  "noPrinted",
  "reconciled",
  "differs",
] as const;
const ROUNDINGS = ["per-bill", "per-line", "per-bill-together", "per-line-together"] as const;
const REASONS = [
  "another-rounding",
  "cash-rounding",
  "tax-included",
  "tax-not-included",
  "not-known",
] as const;
const SHARES = ["value", "weight", "count"] as const;

export type BillWords = Readonly<
  Record<(typeof KEYS)[number] | "paidHome", string> & {
    roundings: Readonly<Record<(typeof ROUNDINGS)[number], string>>;
    why: Readonly<Record<(typeof REASONS)[number], string>>;
    shares: Readonly<Record<(typeof SHARES)[number], string>>;
  }
>;

function wordsOf<const K extends string>(keys: readonly K[], word: (key: K) => string): Record<K, string> {
  return Object.fromEntries(keys.map((key) => [key, word(key)])) as Record<K, string>;
}

/** The words of a bill's fields in the language of the request. */
export async function billWords(currency: string): Promise<BillWords> {
  const t = await getTranslations("bills");
  return {
    ...wordsOf(KEYS, (key) => String(t.raw(key))),
    paidHome: t("paidHome", { currency }),
    roundings: wordsOf(ROUNDINGS, (key) => t(`roundings.${key}`)),
    why: wordsOf(REASONS, (key) => String(t.raw(`why.${key}`))),
    shares: wordsOf(SHARES, (key) => t(`shares.${key}`)),
  };
}
