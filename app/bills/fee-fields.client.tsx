"use client";

import type { ReactNode } from "react";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { PickField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { RowFields } from "../_ui/rows.tsx";
import type { BillProps } from "./bill-props.ts";

type Props = Pick<BillProps, "words" | "amountWords" | "locale"> &
  Readonly<{ at: string; label: string; nameLabel?: string; amountLabel: ReactNode; currency: string }>;

/** One fee: what for, an amount or a percent, and whether it bears tax. */
export function FeeFields({
  at,
  label,
  nameLabel,
  amountLabel,
  currency,
  words,
  amountWords,
  locale,
}: Props) {
  const amounts = { locale, words: amountWords };
  return (
    <RowFields label={label}>
      <Field name={`${at}.name`} label={nameLabel ?? words.name} />
      <AmountField name={`${at}.amount`} label={amountLabel} beside={currency} {...amounts} />
      <AmountField name={`${at}.percent`} label={words.feePercent} beside="%" {...amounts} />
      <PickField
        name={`${at}.taxable`}
        label={words.taxed}
        many
        starts={["yes"]}
        choices={[{ value: "yes", label: words.taxedYes }]}
      />
    </RowFields>
  );
}
