"use client";

import { useState } from "react";
import type { RefundText } from "../../../../lib/show/refund-text.ts";
import { AmountField, type AmountWords } from "../../../_ui/amount-field.client.tsx";
import { useField } from "../../../_ui/form-context.client.tsx";

export type ReturnWords = Readonly<{ many: string; refund: string; refundHint: string }>;

type ReturnFieldsProps = Readonly<{
  start: string;
  unit: string;
  currency: string;
  refunds: Readonly<Record<string, RefundText>>;
  /** What each refund comes from, in words, by quantity. */
  because: Readonly<Record<string, string>>;
  words: ReturnWords;
  locale: string;
  amountWords: AmountWords;
}>;

/** How many go back, and what is expected for them: the suggestion follows the quantity until another figure is typed. */
export function ReturnFields(props: ReturnFieldsProps) {
  const { start, unit, currency, refunds, because, words, locale, amountWords } = props;
  const [quantity, setQuantity] = useState<string | null>(useField("quantity", start).value);
  const typedRefund = useField("amount", "").value;
  const [own, setOwn] = useState(typedRefund !== "");
  const suggested = quantity === null ? undefined : refunds[quantity];
  return (
    <>
      <AmountField
        name="quantity"
        label={words.many}
        start={start}
        beside={unit}
        locale={locale}
        words={amountWords}
        required
        onAmount={setQuantity}
      />
      <AmountField
        key={own ? "own" : (quantity ?? "")}
        name="amount"
        label={words.refund}
        hint={(quantity === null ? undefined : because[quantity]) ?? words.refundHint}
        start={suggested?.exact ?? ""}
        beside={currency}
        locale={locale}
        words={amountWords}
        required
        onAmount={() => setOwn(true)}
      />
    </>
  );
}
