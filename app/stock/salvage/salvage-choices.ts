import { getTranslations } from "next-intl/server";
import type { Material } from "../../../lib/materials/material.ts";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import type { Project } from "../../../lib/projects/project.ts";
import { amountWords } from "../../_words/amount-words.ts";
import { currencyChoices } from "../../_words/currency-choices.ts";
import { unitWords } from "../../_words/unit-words.ts";
import { salvageWords } from "./salvage-words.ts";

/** What the fields of salvage choose from, and their words. */
export async function salvageChoices(
  materials: readonly Material[],
  projects: readonly Project[],
  currency: CurrencyCode,
  locale: string,
) {
  const t = await getTranslations("salvage");
  const units = await unitWords();
  return {
    materials: materials.map(({ id, name, purchaseUnit }) => ({
      value: id,
      label: name,
      unit: units.of(purchaseUnit, "2"),
    })),
    projects: [
      { value: "", label: t("noProject") },
      ...projects.map(({ id, name }) => ({ value: id, label: name })),
    ],
    currencies: currencyChoices(locale, [currency]),
    words: await salvageWords(),
    amountWords: await amountWords(),
    locale,
  };
}
