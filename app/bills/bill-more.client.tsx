"use client";

import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { RowFields, Rows, rowKey } from "../_ui/rows.tsx";
import type { BillProps } from "./bill-props.ts";
import { FeeFields } from "./fee-fields.client.tsx";

const FEE_ROWS = [0, 1] as const;
type Props = BillProps & Readonly<{ quote: boolean }>;

/** Delivery and fees of the whole bill, and what they are shared over the lines by. */
export function BillFees(props: BillProps & Readonly<{ currency: string }>) {
  const { words } = props;
  return (
    <Rows title={words.feesOfAll} hint={words.feesHint}>
      {FEE_ROWS.map((row) => (
        <FeeFields
          key={rowKey(row)}
          {...props}
          at={`fees.${row}`}
          label={`${words.fee} ${row + 1}`}
          amountLabel={words.amount}
        />
      ))}
      <ChoiceField
        name="shareBy"
        label={words.shareBy}
        choices={Object.entries(words.shares).map(([value, label]) => ({ value, label }))}
        start="value"
      />
    </Rows>
  );
}

/** What goes with some bills only: deposits, rebates, cash, what the card was charged, where it is stored. */
export function BillMore({ words, amountWords, locale, quote }: Props) {
  const amounts = { locale, words: amountWords };
  const single = (group: "deposits" | "rebates", label: string, title: string, hint: string) => (
    <Rows title={title} hint={hint}>
      <RowFields label={label}>
        <Field name={`${group}.0.name`} label={words.name} />
        <AmountField name={`${group}.0.amount`} label={words.amount} {...amounts} />
        {group === "deposits" ? (
          <PickField
            name="deposits.0.taxable"
            label={words.taxed}
            many
            choices={[{ value: "yes", label: words.taxedYes }]}
          />
        ) : null}
      </RowFields>
    </Rows>
  );
  return (
    <>
      {single("deposits", words.deposit, words.deposits, words.depositsHint)}
      {single("rebates", words.rebate, words.rebates, words.rebatesHint)}
      {quote ? null : (
        <>
          <PickField
            name="paidInCash"
            label={words.cash}
            many
            choices={[{ value: "yes", label: words.cashYes }]}
          />
          <AmountField name="paidHome" label={words.paidHome} hint={words.paidHomeHint} {...amounts} />
          <PickField
            name="notReceived"
            label={words.receiving}
            many
            choices={[{ value: "yes", label: words.notReceived }]}
          />
          <Field name="storedAt" label={words.storedAt} />
        </>
      )}
      <Field name="note" label={words.note} rows={2} />
    </>
  );
}
