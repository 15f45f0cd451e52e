import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../../../lib/materials/material.ts";
import { DISPOSAL_FEE_BASES } from "../../../../lib/projects/disposal.ts";
import { AmountField } from "../../../_ui/amount-field.client.tsx";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { Rows } from "../../../_ui/rows.tsx";
import { SearchField } from "../../../_ui/search-field.client.tsx";
import { amountWords } from "../../../_words/amount-words.ts";
import type { ChoiceTyped } from "./choice-typed.ts";

type Props = Readonly<{ materials: readonly Material[]; start: ChoiceTyped; currency: string }>;

/** What there is to say about keeping, selling and dumping. */
export async function ChoiceFields({ materials, start, currency }: Props) {
  const t = await getTranslations("salvage");
  const waste = await getTranslations("waste");
  const amounts = { locale: await getLocale(), words: await amountWords() };
  const amount = (name: keyof ChoiceTyped, label: string, beside?: string, hint?: string) => (
    <AmountField
      key={name}
      name={name}
      label={label}
      hint={hint}
      beside={beside}
      start={start[name] ?? ""}
      {...amounts}
    />
  );
  return (
    <>
      <SearchField
        name="materialId"
        label={t("material")}
        choices={materials.map(({ id, name }) => ({ value: id, label: name }))}
        start={start.materialId ?? ""}
        none={t("noSuchMaterial")}
        choose={t("choose")}
      />
      {amount("quantity", t("choiceQuantity"))}
      {amount("condition", t("conditionPercent"), "%", t("conditionHint"))}
      {amount("hours", t("choiceHours"))}
      {amount("hourlyRate", t("hourlyRate"), currency)}
      <Rows title={t("choiceKeepGroup")}>
        {amount("hauling", t("choiceHauling"), currency)}
        {amount("storage", t("choiceStorage"), currency, t("choiceStorageHint"))}
      </Rows>
      <Rows title={t("choiceSellGroup")}>{amount("asking", t("choiceAsking"), currency)}</Rows>
      <Rows title={t("choiceDumpGroup")}>
        <ChoiceField
          name="feeBasis"
          label={waste("basis")}
          choices={DISPOSAL_FEE_BASES.map((value) => ({ value, label: waste(`bases.${value}`) }))}
          start={start.feeBasis ?? "tonne"}
        />
        {amount("fee", t("choiceFee"), currency)}
        {amount("least", t("choiceLeast"), currency, waste("leastHint"))}
        {amount("loads", t("choiceLoads"), undefined, waste("loadsHint"))}
        {amount("weight", t("choiceWeight"), "kg", t("choiceWeightHint"))}
        {amount("haulingAway", t("choiceHaulingAway"), currency)}
      </Rows>
    </>
  );
}
