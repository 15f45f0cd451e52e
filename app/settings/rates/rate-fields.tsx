import { getLocale, getTranslations } from "next-intl/server";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { currencyChoices } from "../../_words/currency-choices.ts";

type RateFieldsProps = Readonly<{ day: string; home: CurrencyCode; source: string | undefined }>;

/** The fields of one published rate. */
export async function RateFields({ day, home, source }: RateFieldsProps) {
  const t = await getTranslations("settings.rates");
  const locale = await getLocale();
  return (
    <>
      <DayField name="date" label={t("date")} start={day} />
      <ChoiceField
        name="base"
        label={t("base")}
        start={home === "USD" ? "CAD" : "USD"}
        choices={currencyChoices(locale, ["USD", "CAD"])}
      />
      <ChoiceField name="quote" label={t("quote")} start={home} choices={currencyChoices(locale, [home])} />
      <AmountField name="rate" label={t("rate")} locale={locale} words={await amountWords()} required />
      <Field name="source" label={t("source")} hint={t("sourceHint")} start={source} required />
    </>
  );
}
