import { getLocale, getTranslations } from "next-intl/server";
import type { TaxRegion } from "../../../lib/tax/region.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { RowFields, Rows, rowKey } from "../../_ui/rows.tsx";
import { amountWords } from "../../_words/amount-words.ts";

/** The fields of a tax region. region null: a new one. Two empty rows, so that a change of rate can be entered at once. */
export async function RegionFields({ region }: Readonly<{ region: TaxRegion | null }>) {
  const t = await getTranslations("settings.taxes");
  const s = await getTranslations("settings");
  const amounts = { locale: await getLocale(), words: await amountWords() };
  const rows = [...(region?.components ?? []), null, null];
  const yesNo = [
    { value: "no", label: s("no") },
    { value: "yes", label: s("yes") },
  ];
  return (
    <>
      {region === null ? (
        <Field name="code" label={t("code")} hint={t("codeHint")} required />
      ) : (
        <input type="hidden" name="code" value={region.code} />
      )}
      <Field name="name" label={t("name")} start={region?.name} />
      <DayField
        name="completeFrom"
        label={t("completeFrom")}
        hint={t("completeFromHint")}
        start={region?.completeFrom ?? ""}
      />
      <Rows title={t("components")} hint={t("componentsHint")}>
        {rows.map((part, index) => {
          const at = `components.${index}`;
          return (
            <RowFields key={rowKey(index)} label={t("componentRow", { number: index + 1 })}>
              <Field name={`${at}.name`} label={t("component")} start={part?.name} />
              <AmountField
                name={`${at}.ratePercent`}
                label={t("rate")}
                start={part?.ratePercent.toFixed()}
                beside="%"
                {...amounts}
              />
              <DayField name={`${at}.from`} label={s("from")} start={part?.from ?? ""} />
              <DayField name={`${at}.until`} label={s("until")} start={part?.until ?? ""} />
              <ChoiceField
                name={`${at}.recoverable`}
                label={t("recoverable")}
                start={part?.recoverable ? "yes" : "no"}
                choices={yesNo}
              />
              <ChoiceField
                name={`${at}.base`}
                label={t("base")}
                start={part?.base ?? "price"}
                choices={[
                  { value: "price", label: t("basePrice") },
                  { value: "price-plus-other-tax", label: t("baseOther") },
                ]}
              />
              <Field name={`${at}.evidence`} label={t("evidence")} start={part?.evidence} />
            </RowFields>
          );
        })}
      </Rows>
    </>
  );
}
