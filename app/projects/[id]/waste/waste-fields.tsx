import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../../../lib/materials/material.ts";
import type { CurrencyCode } from "../../../../lib/money/currencies.ts";
import { DISPOSAL_FEE_BASES, WASTE_KINDS, WEIGHT_UNITS } from "../../../../lib/projects/disposal.ts";
import type { TaxRegion } from "../../../../lib/tax/region.ts";
import { AmountField } from "../../../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../../_ui/field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { amountWords } from "../../../_words/amount-words.ts";
import { currencyChoices } from "../../../_words/currency-choices.ts";

/** What the fields begin with, by their names. */
export type WasteStart = Readonly<{
  kind: string;
  on: string;
  feeBasis: string;
  fee: string;
  least: string;
  loads: string;
  hauling: string;
  currency: CurrencyCode;
  taxIncluded: boolean;
  taxRegion: string;
  weight: string;
  weightUnit: string;
  materialId: string;
  quantity: string;
  note: string;
}>;

type Props = Readonly<{ start: WasteStart; materials: readonly Material[]; regions: readonly TaxRegion[] }>;

/** The fields of waste: what kind, the fee as charged, hauling; tax, weight and note folded away. */
export async function WasteFields({ start, materials, regions }: Props) {
  const t = await getTranslations("waste");
  const locale = await getLocale();
  const amounts = { locale, words: await amountWords() };
  const folded = [start.weight, start.materialId, start.note, start.least].some((text) => text !== "");
  return (
    <>
      <ChoiceField
        name="kind"
        label={t("kind")}
        hint={t("kindHint")}
        choices={WASTE_KINDS.map((value) => ({ value, label: t(`kinds.${value}`) }))}
        start={start.kind}
      />
      <ChoiceField
        name="feeBasis"
        label={t("basis")}
        choices={DISPOSAL_FEE_BASES.map((value) => ({ value, label: t(`bases.${value}`) }))}
        start={start.feeBasis}
      />
      <AmountField name="fee" label={t("fee")} start={start.fee} required {...amounts} />
      <AmountField name="loads" label={t("loads")} hint={t("loadsHint")} start={start.loads} {...amounts} />
      <AmountField
        name="weight"
        label={t("weight")}
        hint={t("weightHint")}
        start={start.weight}
        {...amounts}
      />
      <ChoiceField
        name="weightUnit"
        label={t("weightUnit")}
        choices={WEIGHT_UNITS.map((value) => ({ value, label: t(`weightUnits.${value}`) }))}
        start={start.weightUnit}
      />
      <AmountField
        name="hauling"
        label={t("hauling")}
        hint={t("haulingHint")}
        start={start.hauling}
        {...amounts}
      />
      <DayField name="on" label={t("on")} start={start.on} />
      <ChoiceField
        name="taxRegion"
        label={t("taxRegion")}
        choices={[
          { value: "", label: t("noTax") },
          ...regions.map(({ code, name }) => ({ value: code, label: name })),
        ]}
        start={start.taxRegion}
      />
      <PickField
        name="taxIncluded"
        label={t("tax")}
        choices={[
          { value: "no", label: t("taxOut") },
          { value: "yes", label: t("taxIn") },
        ]}
        starts={[start.taxIncluded ? "yes" : "no"]}
      />
      <More title={t("more")} open={folded}>
        <AmountField name="least" label={t("least")} hint={t("leastHint")} start={start.least} {...amounts} />
        <ChoiceField
          name="materialId"
          label={t("material")}
          choices={[
            { value: "", label: t("noMaterial") },
            ...materials.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          start={start.materialId}
        />
        <AmountField
          name="quantity"
          label={t("quantity")}
          hint={t("quantityHint")}
          start={start.quantity}
          {...amounts}
        />
        <ChoiceField
          name="currency"
          label={t("currency")}
          choices={currencyChoices(locale, [start.currency])}
          start={start.currency}
        />
        <Field name="note" label={t("noteField")} rows={2} start={start.note} />
      </More>
    </>
  );
}
