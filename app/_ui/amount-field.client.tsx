"use client";

import { type ReactNode, useState } from "react";
import { parseAmount, readBack } from "../../lib/show/parse-amount.ts";
import { FieldFrame } from "./field.client.tsx";
import style from "./field.module.css";
import { describedBy, useField } from "./form-context.client.tsx";

/** What stands under the field: before a read amount, and when it cannot be told. */
export type AmountWords = Readonly<{ readAs: string; cannotTell: string }>;

export type AmountFieldProps = Readonly<{
  name: string;
  label: ReactNode;
  hint?: ReactNode;
  start?: string;
  required?: boolean;
  locale: string;
  words: AmountWords;
  /** A short text at the end of the box: a currency, "%". */
  beside?: ReactNode;
  /** The one big figure of a screen. */
  big?: boolean;
  /** Called with canonical decimal text, or null while it cannot be told. */
  onAmount?: (amount: string | null) => void;
  children?: ReactNode;
}>;

/**
 * A decimal amount, typed as people type it. What was understood stands under it. The form sends the text as typed;
 * the action reads it with the same parser. Children stand at the end of the box (a currency choice).
 */
export function AmountField(props: AmountFieldProps) {
  const { name, label, hint, start = "", required, locale, words, beside, big, onAmount, children } = props;
  const { id, value, fault } = useField(name, start);
  const [typed, setTyped] = useState(value);
  const amount = typed.trim() === "" ? "" : parseAmount(typed, locale);
  const under =
    amount === "" ? "" : amount === null ? words.cannotTell : `${words.readAs} ${readBack(amount, locale)}`;
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <div className={`${style.joined} ${big ? style.big : ""}`}>
        <input
          id={id}
          name={name}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="done"
          className={`${style.input} ${style.figure}`}
          defaultValue={value}
          onChange={(event) => {
            setTyped(event.target.value);
            onAmount?.(parseAmount(event.target.value, locale));
          }}
          aria-required={required}
          aria-invalid={fault !== null}
          aria-describedby={describedBy(id, {
            hint: Boolean(hint),
            fault: fault !== null,
            more: `${id}-read`,
          })}
        />
        {beside ? <span className={style.beside}>{beside}</span> : null}
        {children}
      </div>
      <p className={style.readBack} id={`${id}-read`}>
        {under}
      </p>
    </FieldFrame>
  );
}
