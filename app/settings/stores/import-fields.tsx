import { getLocale, getTranslations } from "next-intl/server";
import type { ImportCharge } from "../../../lib/prices/store.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { RowFields, Rows, rowKey } from "../../_ui/rows.tsx";
import { amountWords } from "../../_words/amount-words.ts";

/** What bringing goods home from a store abroad costs: not confirmed, confirmed as none, or listed. */
export async function ImportFields(
  props: Readonly<{ charges: readonly ImportCharge[] | null; open: boolean }>,
) {
  const t = await getTranslations("settings.stores");
  const s = await getTranslations("settings");
  const amounts = { locale: await getLocale(), words: await amountWords() };
  const state = props.charges === null ? "unconfirmed" : props.charges.length === 0 ? "none" : "some";
  const rows = [...(props.charges ?? []), null];
  return (
    <details open={props.open}>
      <summary>{t("importSummary")}</summary>
      <Rows title={t("importTitle")} hint={t("importHint")}>
        <PickField
          name="importState"
          label={t("importState")}
          starts={[state]}
          choices={[
            { value: "unconfirmed", label: t("importUnconfirmed") },
            { value: "none", label: t("importNone") },
            { value: "some", label: t("importSome") },
          ]}
        />
        {rows.map((charge, index) => {
          const at = `importCharges.${index}`;
          return (
            <RowFields key={rowKey(index)} label={t("importRow", { number: index + 1 })}>
              <Field name={`${at}.name`} label={t("chargeName")} start={charge?.name} />
              <AmountField
                name={`${at}.percent`}
                label={t("chargePercent")}
                start={charge?.percent.toFixed()}
                beside="%"
                {...amounts}
              />
              <AmountField
                name={`${at}.perOrder`}
                label={t("perOrder")}
                start={charge?.perOrder?.toFixed()}
                {...amounts}
              />
              <ChoiceField
                name={`${at}.recoverable`}
                label={t("recoverable")}
                start={charge?.recoverable ? "yes" : "no"}
                choices={[
                  { value: "no", label: s("no") },
                  { value: "yes", label: s("yes") },
                ]}
              />
              <DayField name={`${at}.from`} label={s("from")} start={charge?.from ?? ""} />
              <DayField name={`${at}.until`} label={s("until")} start={charge?.until ?? ""} />
            </RowFields>
          );
        })}
      </Rows>
    </details>
  );
}
