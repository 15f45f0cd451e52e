import { getTranslations } from "next-intl/server";
import type { SeenPrice } from "../../lib/show/seen-price.ts";
import { unitWords } from "../_words/unit-words.ts";

/** A price as on the tag, in words: "CAD 20.00 for 3 pieces, tax included", and what else was said with it. */
export async function seenWords() {
  const t = await getTranslations("materials.page");
  const units = await unitWords();
  const price = (seen: SeenPrice): string | null => {
    if (seen.amount === null) return null;
    const amount = `${seen.currency} ${seen.amount}`;
    return seen.quantity === null
      ? t("perOne", { amount, unit: units.one(seen.unit) })
      : t("perMany", {
          amount,
          quantity: seen.quantity.text,
          unit: units.of(seen.unit, seen.quantity.exact),
        });
  };
  const more = (seen: SeenPrice): string[] =>
    [
      seen.amount === null ? null : t(seen.taxIncluded ? "taxIn" : "taxOut"),
      seen.minimum && t("minimum", { quantity: seen.minimum }),
      seen.maximum && t("maximum", { quantity: seen.maximum }),
      seen.packSize && t("packs", { quantity: seen.packSize }),
      seen.from && t("fromDay", { day: seen.from }),
      seen.until && t("until", { day: seen.until }),
      ...seen.fees.map((name) => t("plusFee", { name })),
    ].filter((words) => words !== null);
  return { price, more };
}
