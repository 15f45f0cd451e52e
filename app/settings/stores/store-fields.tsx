import { getLocale, getTranslations } from "next-intl/server";
import { CATEGORIES } from "../../../lib/materials/material.ts";
import { isForeign } from "../../../lib/prices/foreign-store.ts";
import type { Store } from "../../../lib/prices/store.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { RowFields, Rows, rowKey } from "../../_ui/rows.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { currencyChoices } from "../../_words/currency-choices.ts";
import { ImportFields } from "./import-fields.tsx";
import { UsualFields } from "./usual-fields.tsx";

export type StoreFieldsProps = Readonly<{
  /** null: a new store. */
  store: Store | null;
  valuation: Valuation;
}>;

/** The fields of a store, for adding and changing. */
export async function StoreFields({ store, valuation }: StoreFieldsProps) {
  const { homeCurrency } = valuation;
  const t = await getTranslations("settings.stores");
  const s = await getTranslations("settings");
  const c = await getTranslations("categories");
  const locale = await getLocale();
  const amounts = { locale, words: await amountWords() };
  const tripCurrency = store?.tripCost?.currency ?? homeCurrency;
  const discounts = [...(store?.discounts ?? []), null];
  return (
    <>
      <Field name="name" label={t("nameLabel")} start={store?.name} required />
      <ChoiceField
        name="taxRegion"
        label={t("taxRegion")}
        hint={t("taxRegionHint")}
        start={store?.taxRegion ?? valuation.taxRegion}
        choices={[...valuation.regions.values()].map(({ code, name }) => ({
          value: code,
          label: `${name} (${code})`,
        }))}
      />
      <ChoiceField
        name="currency"
        label={t("currency")}
        start={store?.currency ?? homeCurrency}
        choices={currencyChoices(locale, ["CAD", "USD"])}
      />
      <PickField
        name="pricesIncludeTax"
        label={t("includesTaxLabel")}
        starts={[store?.pricesIncludeTax ? "yes" : "no"]}
        choices={[
          { value: "no", label: t("before") },
          { value: "yes", label: t("with") },
        ]}
      />
      <input type="hidden" name="tripCost.currency" value={tripCurrency} />
      <AmountField
        name="tripCost.amount"
        label={t("tripCost")}
        hint={t("tripCostHint", { currency: tripCurrency })}
        start={store?.tripCost?.amount.toFixed()}
        beside={tripCurrency}
        {...amounts}
      />
      <AmountField
        name="distanceKm"
        label={t("distance")}
        hint={t("distanceHint")}
        start={store?.distanceKm?.toFixed()}
        {...amounts}
      />
      <UsualFields store={store} />
      <Rows title={t("discounts")} hint={t("discountsHint")}>
        {discounts.map((discount, index) => (
          <RowFields key={rowKey(index)} label={t("discountRow", { number: index + 1 })}>
            <ChoiceField
              name={`discounts.${index}.category`}
              label={t("category")}
              start={discount?.category ?? ""}
              choices={[
                { value: "", label: t("everything") },
                ...CATEGORIES.map((category) => ({ value: category, label: c(category) })),
              ]}
            />
            <AmountField
              name={`discounts.${index}.percent`}
              label={t("percent")}
              start={discount?.percent.toFixed()}
              beside="%"
              {...amounts}
            />
            <DayField name={`discounts.${index}.from`} label={s("from")} start={discount?.from ?? ""} />
            <DayField name={`discounts.${index}.until`} label={s("until")} start={discount?.until ?? ""} />
          </RowFields>
        ))}
      </Rows>
      <ImportFields
        charges={store === null ? null : store.importCharges}
        open={store !== null && (isForeign(store, valuation) || store.importCharges !== null)}
      />
    </>
  );
}
