import { getTranslations } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import { usableUnits } from "../../lib/show/usable-units.ts";
import { amountWords } from "../_words/amount-words.ts";
import { unitChoices } from "../_words/unit-words.ts";
import type { NeedMaterial, NeedWords } from "./need-fields.client.tsx";

/** The words of a need's fields in the language of the request. */
export async function needWords(currency: string): Promise<NeedWords> {
  const t = await getTranslations("projects");
  return {
    amount: await amountWords(),
    material: t("material"),
    noSuchMaterial: t("noSuchMaterial"),
    choose: t("choose"),
    quantity: t("quantity"),
    unit: t("unit"),
    asBought: t("asBought"),
    waste: t("waste"),
    wasteHint: t("wasteHint"),
    neededBy: t("neededBy"),
    budgetUnitPrice: t("budgetUnitPrice"),
    budgetUnitPriceHint: t("budgetUnitPriceHint", { currency }),
    used: t("used"),
    acceptsUsed: t("acceptsUsed"),
    usedHint: t("usedHint"),
    usedCaution: t("usedCaution"),
    more: t("moreFields"),
    alternative: t("alternative"),
    alternativeHint: t("alternativeHint"),
    alternativeRow: t("alternativeRow"),
    factor: t("factor"),
    validFrom: t("validFrom"),
    validFromHint: t("validFromHint"),
  };
}

/** Materials as choices, each with the units a quantity of it can be stated in. */
export function needMaterials(materials: readonly Material[]): Promise<NeedMaterial[]> {
  return Promise.all(
    materials.map(async (material) => ({
      value: material.id,
      label: material.name,
      units: await unitChoices(usableUnits(material)),
      carriesLoad: material.category === "dimensional-lumber" || material.category === "sheet-goods",
    })),
  );
}
