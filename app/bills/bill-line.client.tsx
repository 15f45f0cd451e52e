"use client";

import { useState } from "react";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { type Choice, ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { useField } from "../_ui/form-context.client.tsx";
import { More } from "../_ui/more.tsx";
import { RowFields } from "../_ui/rows.tsx";
import { SearchField } from "../_ui/search-field.client.tsx";
import type { BillProps } from "./bill-props.ts";
import style from "./bills.module.css";
import { FeeFields } from "./fee-fields.client.tsx";
import { fill } from "./fill.ts";
import { HandedBackFields } from "./handed-back.client.tsx";

type Props = BillProps &
  Readonly<{
    row: number;
    /** The same list at every drawing: the search field begins anew when it gets another. */
    materials: readonly Choice[];
    currency: string;
    /** Components of the store's region: a line may be exempt of some. */
    taxes: readonly string[];
    /** What the line comes to, while it is typed. */
    net: string | null;
    onChoice: () => void;
  }>;

/** One line as printed: a material, or something in words; how many at which price; rarer things folded away. */
export function BillLine(props: Props) {
  const { facts, units, words, row, currency, taxes, net, onChoice } = props;
  const amounts = { locale: props.locale, words: props.amountWords };
  const at = `lines.${row}`;
  const [materialId, setMaterial] = useState(useField(`${at}.materialId`, "").value);
  const material = facts.materials.find(({ id }) => id === materialId);
  const usable =
    material === undefined
      ? units
      : units.filter(({ value }) => material.units.some((unit) => unit === value));
  return (
    <RowFields label={fill(words.line, { number: String(row + 1) })}>
      <div className={style.whole}>
        <SearchField
          name={`${at}.materialId`}
          label={words.material}
          choices={props.materials}
          none={words.noSuchMaterial}
          choose={words.choose}
          onChoice={(chosen) => {
            setMaterial(chosen);
            onChoice();
          }}
        />
      </div>
      {material === undefined ? (
        <div className={style.whole}>
          <Field name={`${at}.text`} label={words.text} hint={words.textHint} />
        </div>
      ) : null}
      <AmountField name={`${at}.quantity`} label={words.quantity} {...amounts} />
      <ChoiceField
        key={`unit ${materialId}`}
        name={`${at}.unit`}
        label={words.unit}
        choices={usable}
        start={material?.unit ?? "each"}
      />
      <AmountField name={`${at}.price.amount`} label={words.price} beside={currency} {...amounts} />
      <p className={style.net}>{net === null ? "" : fill(words.lineComes, { amount: net })}</p>
      <div className={style.whole}>
        <More title={fill(words.lineMore, { number: String(row + 1) })}>
          <AmountField
            name={`${at}.price.per.quantity`}
            label={words.per}
            hint={words.perHint}
            start="1"
            {...amounts}
          />
          <ChoiceField
            key={`per ${materialId}`}
            name={`${at}.price.per.unit`}
            label={words.perUnit}
            choices={[{ value: "", label: words.sameUnit }, ...usable]}
          />
          <AmountField
            name={`${at}.discount.percent`}
            label={words.discountPercent}
            beside="%"
            {...amounts}
          />
          <AmountField
            name={`${at}.discount.amount`}
            label={words.discountAmount}
            beside={currency}
            {...amounts}
          />
          {taxes.length === 0 ? null : (
            <PickField
              name={`${at}.exemptFrom`}
              label={words.exempt}
              many
              choices={taxes.map((name) => ({ value: name, label: name }))}
            />
          )}
          <FeeFields
            {...props}
            at={`${at}.fees.0`}
            label={words.lineFee}
            nameLabel={words.lineFee}
            amountLabel={words.feeEach}
          />
          <HandedBackFields {...props} at={at} materialId={materialId} />
          <PickField
            name={`${at}.keep`}
            label={words.keep}
            many
            starts={["price", "lot"]}
            choices={[
              { value: "price", label: words.keepPrice },
              { value: "lot", label: words.keepLot },
            ]}
          />
        </More>
      </div>
    </RowFields>
  );
}
