import { getTranslations } from "next-intl/server";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import { TERMS } from "../../lib/prices/observation.ts";
import { LOT_ORIGINS } from "../../lib/stock/lot.ts";
import { amountWords } from "../_words/amount-words.ts";
import { currencyChoices } from "../_words/currency-choices.ts";
import { unitWords } from "../_words/unit-words.ts";
import type { LotFieldsProps } from "./lot-field-props.ts";
import { lotWords } from "./lot-words.ts";

type Choices = Pick<
  LotFieldsProps,
  "materials" | "stores" | "origins" | "terms" | "currencies" | "regions" | "words" | "amountWords"
>;

/** What a lot can be made of: materials and stores in use, origins, terms, currencies, tax regions; and the words. */
export async function lotChoices({ materials, valuation }: ExposureFacts, locale: string): Promise<Choices> {
  const t = await getTranslations("stock");
  const terms = await getTranslations("terms");
  const units = await unitWords();
  const stores = [...valuation.stores.values()].filter((store) => store.archivedOn === null);
  const currencies = [valuation.homeCurrency, ...stores.map((store) => store.currency)];
  return {
    materials: [...materials.values()]
      .filter((material) => material.archivedOn === null)
      .map(({ id, name, purchaseUnit }) => ({ value: id, label: name, unit: units.of(purchaseUnit, "2") })),
    stores: stores.map(({ id, name, currency, pricesIncludeTax }) => ({
      value: id,
      label: name,
      currency,
      taxIncluded: pricesIncludeTax,
    })),
    origins: LOT_ORIGINS.map((value) => ({ value, label: t(`origins.${value}`) })),
    terms: TERMS.filter((one) => one !== "none-left" && one !== "paid").map((value) => ({
      value,
      label: terms(value),
    })),
    currencies: currencyChoices(locale, currencies),
    regions: [...valuation.regions.values()].map(({ code, name }) => ({ value: code, label: name })),
    words: await lotWords(valuation.homeCurrency),
    amountWords: await amountWords(),
  };
}
