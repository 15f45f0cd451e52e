"use client";

import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { DayField, Field } from "../_ui/field.client.tsx";
import { More } from "../_ui/more.tsx";
import { RowFields, Rows, rowKey } from "../_ui/rows.tsx";
import { LotAgreed } from "./lot-agreed.client.tsx";
import type { LotFieldsProps } from "./lot-field-props.ts";

/** Fees a receipt may list beside the price: so many rows are offered. */
const FEE_ROWS = [0, 1] as const;

/** What goes with some lots only, folded away: terms, fees, what the card was charged, when it comes, its condition. */
export function LotMore({ terms, regions, copied, words, amountWords, locale }: LotFieldsProps) {
  const amounts = { locale, words: amountWords };
  return (
    <More title={words.details}>
      <DayField name="acquiredOn" label={words.acquiredOn} hint={words.acquiredOnHint} />
      <PickField
        name="notReceived"
        label={words.onOrder}
        many
        choices={[{ value: "yes", label: words.notReceived }]}
      />
      {copied ? null : (
        <>
          <ChoiceField
            name="terms"
            label={words.terms}
            hint={words.termsHint}
            choices={[{ value: "", label: words.notSaid }, ...terms]}
          />
          <AmountField name="paidHome" label={words.paidHome} hint={words.paidHomeHint} {...amounts} />
          <ChoiceField
            name="paid.taxRegion"
            label={words.taxRegion}
            hint={words.taxRegionHint}
            choices={[{ value: "", label: words.ofTheStore }, ...regions]}
          />
          <Rows title={words.fees} hint={words.feesHint}>
            {FEE_ROWS.map((row) => (
              <RowFields key={rowKey(row)} label={`${words.feeRow} ${row + 1}`}>
                <Field name={`fees.${row}.name`} label={words.feeName} />
                <AmountField name={`fees.${row}.amount`} label={words.feeAmount} {...amounts} />
                <ChoiceField
                  name={`fees.${row}.basis`}
                  label={words.feeBasis}
                  choices={[
                    { value: "order", label: words.feeOrder },
                    { value: "unit", label: words.feeUnit },
                  ]}
                />
                <PickField
                  name={`fees.${row}.taxable`}
                  label={words.feeTaxed}
                  many
                  choices={[{ value: "yes", label: words.feeTaxable }]}
                />
              </RowFields>
            ))}
          </Rows>
          <AmountField
            name="condition"
            label={words.condition}
            hint={words.conditionHint}
            start="100"
            beside="%"
            {...amounts}
          />
        </>
      )}
      <LotAgreed words={words} amountWords={amountWords} locale={locale} />
      <Field name="note" label={words.note} rows={3} />
    </More>
  );
}
