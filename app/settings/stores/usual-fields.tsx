import { getLocale, getTranslations } from "next-intl/server";
import type { Store } from "../../../lib/prices/store.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Field } from "../../_ui/field.client.tsx";
import { More } from "../../_ui/more.tsx";
import { amountWords } from "../../_words/amount-words.ts";

const DAYS = ["returnDays", "priceAdjustmentDays", "leadDays"] as const;

/** What the store does as a rule when goods are bought there: copied into every lot, where it can be said otherwise. */
export async function UsualFields({ store }: Readonly<{ store: Store | null }>) {
  const t = await getTranslations("settings.stores");
  const said = DAYS.some((name) => store?.[name]) || Boolean(store?.restockingPercent);
  return (
    <More title={t("usualTitle")} open={said}>
      <p>{t("usualNote")}</p>
      {DAYS.map((name) => (
        <Field
          key={name}
          name={name}
          label={t(name)}
          hint={t(`${name}Hint`)}
          start={store?.[name]?.toString() ?? ""}
          inputMode="numeric"
        />
      ))}
      <AmountField
        name="restockingPercent"
        label={t("restockingPercent")}
        hint={t("restockingPercentHint")}
        start={store?.restockingPercent?.toFixed()}
        beside="%"
        locale={await getLocale()}
        words={await amountWords()}
      />
    </More>
  );
}
