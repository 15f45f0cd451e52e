"use client";

import { AmountField } from "../_ui/amount-field.client.tsx";
import { DayField } from "../_ui/field.client.tsx";
import { RowFields, Rows, rowKey } from "../_ui/rows.tsx";
import type { LotFieldsProps } from "./lot-field-props.ts";

/** Payments offered at once: a down payment and one more; the rest is paid on the lot's page. */
const PAYMENT_ROWS = [0, 1] as const;

/** Of an order: what was paid down, when it is expected, until when it is taken back; empty is as the store usually does. */
export function LotAgreed({
  words,
  amountWords,
  locale,
}: Pick<LotFieldsProps, "words" | "amountWords" | "locale">) {
  const amounts = { locale, words: amountWords };
  return (
    <>
      <Rows title={words.payments} hint={words.paymentsHint}>
        {PAYMENT_ROWS.map((row) => (
          <RowFields key={rowKey(row)} label={`${words.paymentRow} ${row + 1}`}>
            <AmountField name={`payments.${row}.amount`} label={words.paymentAmount} {...amounts} />
            <DayField name={`payments.${row}.on`} label={words.paymentOn} />
          </RowFields>
        ))}
      </Rows>
      <Rows title={words.agreedTitle} hint={words.agreedHint}>
        <DayField name="expectedOn" label={words.expectedOn} />
        <DayField name="returnableUntil" label={words.returnableUntil} />
        <DayField name="adjustableUntil" label={words.adjustableUntil} />
        <AmountField name="restockingPercent" label={words.restockingPercent} beside="%" {...amounts} />
      </Rows>
    </>
  );
}
