import { getTranslations } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import { AmountField, type AmountWords } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { DayField, Field } from "../_ui/field.client.tsx";
import { RowFields, Rows, rowKey } from "../_ui/rows.tsx";
import style from "./materials.module.css";
import { taxesToChoose } from "./tax-names.ts";

type RarelyCorrectedProps = Readonly<{
  seen: Observation;
  material: Material;
  valuation: Valuation;
  amounts: Readonly<{ locale: string; words: AmountWords }>;
}>;

/** What goes with some prices only: quantities, dates, delivery, taxes that do not apply, fees. Open when any is there. */
export async function RarelyCorrected({ seen, material, valuation, amounts }: RarelyCorrectedProps) {
  const t = await getTranslations("materials.correct");
  const s = await getTranslations("settings");
  const has = [seen.minQuantity, seen.maxQuantity, seen.packSize, seen.from, seen.until, seen.taxRegion].some(
    (value) => value !== null,
  );
  const taxes = taxesToChoose(valuation, [...seen.exemptFrom, ...material.exemptFrom]);
  const yesNo = [
    { value: "no", label: s("no") },
    { value: "yes", label: s("yes") },
  ];
  return (
    <details open={has || seen.fees.length > 0 || seen.exemptFrom.length > 0}>
      <summary>{t("more")}</summary>
      <div className={style.stack}>
        <div className={style.pair}>
          <AmountField name="minQuantity" label={t("min")} start={seen.minQuantity?.toFixed()} {...amounts} />
          <AmountField name="maxQuantity" label={t("max")} start={seen.maxQuantity?.toFixed()} {...amounts} />
          <AmountField name="packSize" label={t("packSize")} start={seen.packSize?.toFixed()} {...amounts} />
        </div>
        <div className={style.pair}>
          <DayField name="from" label={t("from")} start={seen.from ?? ""} />
          <DayField name="until" label={t("until")} start={seen.until ?? ""} />
        </div>
        <ChoiceField
          name="taxRegion"
          label={t("taxRegion")}
          hint={t("taxRegionHint")}
          start={seen.taxRegion ?? ""}
          choices={[
            { value: "", label: t("pickedUp") },
            ...[...valuation.regions.values()].map(({ code, name }) => ({
              value: code,
              label: `${name} (${code})`,
            })),
          ]}
        />
        <PickField
          name="exemptFrom"
          label={t("exemptFrom")}
          many
          starts={seen.exemptFrom}
          choices={taxes.map((tax) => ({ value: tax, label: tax }))}
        />
        <Rows title={t("fees")} hint={t("feesHint")}>
          {[...seen.fees, null].map((fee, index) => {
            const at = `fees.${index}`;
            return (
              <RowFields key={rowKey(index)} label={t("feeRow", { number: index + 1 })}>
                <Field name={`${at}.name`} label={t("feeName")} start={fee?.name} />
                <AmountField
                  name={`${at}.amount`}
                  label={t("feeAmount")}
                  start={fee?.amount?.toFixed()}
                  {...amounts}
                />
                <AmountField
                  name={`${at}.percent`}
                  label={t("feePercent")}
                  start={fee?.percent?.toFixed()}
                  beside="%"
                  {...amounts}
                />
                <ChoiceField
                  name={`${at}.basis`}
                  label={t("feeBasis")}
                  start={fee?.basis ?? "unit"}
                  choices={[
                    { value: "unit", label: t("feePerUnit") },
                    { value: "order", label: t("feePerOrder") },
                  ]}
                />
                <AmountField
                  name={`${at}.freeFrom`}
                  label={t("feeFreeFrom")}
                  start={fee?.freeFrom?.toFixed()}
                  {...amounts}
                />
                <ChoiceField
                  name={`${at}.taxable`}
                  label={t("feeTaxable")}
                  start={fee?.taxable === false ? "no" : "yes"}
                  choices={yesNo}
                />
              </RowFields>
            );
          })}
        </Rows>
      </div>
    </details>
  );
}
