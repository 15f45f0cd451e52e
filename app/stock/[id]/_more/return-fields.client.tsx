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
  // The field is drawn anew for another quantity only: never while a figure is typed into it.
  const [suggestedFor, setSuggestedFor] = useState(quantity);
  const suggested = suggestedFor === null ? undefined : refunds[suggestedFor];
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
        onAmount={(typed) => {
          setQuantity(typed);
          if (!own) setSuggestedFor(typed);
        }}
      />
      <AmountField
        key={suggestedFor ?? ""}
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
