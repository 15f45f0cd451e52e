import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { TERMS } from "../../lib/prices/observation.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import { usableUnits } from "../../lib/show/usable-units.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { DayField, Field } from "../_ui/field.client.tsx";
import { amountWords } from "../_words/amount-words.ts";
import { currencyChoices } from "../_words/currency-choices.ts";
import { unitWords } from "../_words/unit-words.ts";
import style from "./materials.module.css";
import { RarelyCorrected } from "./rarely-corrected.tsx";

export type CorrectionFieldsProps = Readonly<{
  seen: Observation;
  material: Material;
  valuation: Valuation;
}>;

/** The fields of a price that can be corrected, each beginning with what it says now. */
export async function CorrectionFields({ seen, material, valuation }: CorrectionFieldsProps) {
  const t = await getTranslations("materials.correct");
  const page = await getTranslations("materials.page");
  const terms = await getTranslations("terms");
  const locale = await getLocale();
  const units = await unitWords();
  const amounts = { locale, words: await amountWords() };
  const home = valuation.stores.get(seen.storeId)?.currency ?? valuation.homeCurrency;
  const currency = seen.amount?.currency ?? home;
  const usable = usableUnits(material);
  const stated = usable.includes(seen.per.unit) ? usable : [seen.per.unit, ...usable];
  return (
    <>
      <DayField name="seenOn" label={t("seenOn")} start={seen.seenOn} />
      <ChoiceField
        name="terms"
        label={t("terms")}
        start={seen.terms}
        choices={TERMS.map((one) => ({ value: one, label: terms(one) }))}
      />
      <div className={style.pair}>
        <AmountField name="amount" label={t("amount")} start={seen.amount?.amount.toFixed()} {...amounts} />
        <ChoiceField
          name="currency"
          label={t("currency")}
          start={currency}
          choices={currencyChoices(locale, [home, valuation.homeCurrency])}
        />
      </div>
      <div className={style.pair}>
        <AmountField name="per.quantity" label={t("per")} start={seen.per.quantity.toFixed()} {...amounts} />
        <ChoiceField
          name="per.unit"
          label={t("perUnit")}
          start={seen.per.unit}
          choices={stated.map((unit) => ({ value: unit, label: units.one(unit) }))}
        />
      </div>
      <PickField
        name="taxIncluded"
        label={t("tax")}
        starts={[seen.taxIncluded ? "yes" : "no"]}
        choices={[
          { value: "no", label: page("taxOut") },
          { value: "yes", label: page("taxIn") },
        ]}
      />
      <RarelyCorrected seen={seen} material={material} valuation={valuation} amounts={amounts} />
      <Field name="note" label={t("note")} rows={2} start={seen.note ?? ""} />
      <Field name="reason" label={t("reason")} hint={t("reasonHint")} required />
    </>
  );
}
