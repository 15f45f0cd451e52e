import { readBack } from "../../lib/show/parse-amount.ts";
import type { Row } from "../_offline/log-database.ts";
import { priceSent } from "../_offline/since.ts";
import { type AisleNames, NOT_KNOWN } from "./names.ts";
import { type LogWords, TERMS_WORDS } from "./words.ts";

/** One row of the phone in words: what, how much, where. */
export function rowWords(row: Row, names: AisleNames, words: LogWords, locale: string): string {
  if (row.kind === "price") {
    const { materialId, storeId, amount, terms } = priceSent(row);
    const what = amount === undefined ? TERMS_WORDS[terms] : readBack(amount, locale);
    const known = names.material(materialId);
    return `${known === NOT_KNOWN ? (row.named ?? known) : known}, ${names.store(storeId)}: ${what}`;
  }
  const entry = (row.said.entry ?? {}) as Readonly<{ name?: string; materialId?: string; quantity?: string }>;
  const what = entry.name ?? (entry.materialId ? names.material(entry.materialId) : "");
  return [words.kinds[row.kind], what, entry.quantity].filter(Boolean).join(" ");
}
