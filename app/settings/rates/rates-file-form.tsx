import { getLocale, getTranslations } from "next-intl/server";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { Field } from "../../_ui/field.client.tsx";
import { More } from "../../_ui/more.tsx";
import { currencyChoices } from "../../_words/currency-choices.ts";
import { FileForm } from "../files/file-form.client.tsx";
import { fileFormWords } from "../files/file-words.ts";
import { takeRatesForm } from "./file-action.ts";

/** A file of rates from a bank. used: the currencies the workspace has to do with. */
export async function RatesFileForm({
  home,
  used,
}: Readonly<{ home: CurrencyCode; used: readonly CurrencyCode[] }>) {
  const t = await getTranslations("settings.rates.file");
  const f = await getTranslations("settings.files");
  const locale = await getLocale();
  const currencies = [{ value: "", label: t("pairInFile") }, ...currencyChoices(locale, [home, "USD"])];
  return (
    <FileForm action={takeRatesForm} words={await fileFormWords()}>
      <Field
        name="currencies"
        label={t("currencies")}
        hint={t("currenciesHint")}
        start={[...new Set([home, "USD", "CAD", "EUR", ...used])].sort().join(" ")}
      />
      <More title={t("more")}>
        <Field name="source" label={t("source")} hint={t("sourceHint")} />
        <ChoiceField name="base" label={t("base")} hint={t("pairHint")} choices={currencies} />
        <ChoiceField name="quote" label={t("quote")} choices={currencies} />
        <ChoiceField
          name="order"
          label={f("order")}
          choices={[
            { value: "", label: f("orderSeen") },
            { value: "month-first", label: f("monthFirst") },
            { value: "day-first", label: f("dayFirst") },
          ]}
        />
      </More>
    </FileForm>
  );
}
