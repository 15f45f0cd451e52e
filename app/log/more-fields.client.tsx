"use client";

import type { Terms } from "../../lib/prices/observation.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { DayField, Field } from "../_ui/field.client.tsx";
import style from "./log.module.css";
import type { LogWords } from "./words.ts";

type Extra = "from" | "until" | "minQuantity" | "maxQuantity" | "packSize";

/** Which further fields a price of these terms usually has; they stand in sight when chosen. */
const USUAL: Readonly<Record<Terms, readonly Extra[]>> = {
  shelf: [],
  special: ["until", "maxQuantity"],
  clearance: ["maxQuantity"],
  "quantity-break": ["minQuantity"],
  quote: ["until", "minQuantity"],
  used: ["maxQuantity"],
  paid: [],
  "none-left": [],
};
const ALL: readonly Extra[] = ["from", "until", "minQuantity", "maxQuantity", "packSize"];

/** What buys some and gets some free is a special by its nature. */
const MAY_GIVE_FREE: readonly Terms[] = ["special", "clearance"];

type MoreFieldsProps = Readonly<{
  /** null while the browser has not taken over: then every field stands behind "more". */
  terms: Terms | null;
  today: string;
  locale: string;
  words: LogWords;
  onPaidFor: (amount: string | null) => void;
  onFreeWith: (amount: string | null) => void;
}>;

/** What goes with some prices only: dates, quantities, a note. The usual ones for the terms in sight, the rest folded away. */
export function MoreFields({ terms, today, locale, words, onPaidFor, onFreeWith }: MoreFieldsProps) {
  const usual = terms === null ? [] : USUAL[terms];
  const amountWords = { readAs: words.readAs, cannotTell: words.notUnderstood };
  const field = (name: Extra) =>
    name === "from" || name === "until" ? (
      <DayField key={name} name={name} label={words[name]} />
    ) : (
      <AmountField key={name} name={name} label={words[name]} locale={locale} words={amountWords} />
    );
  return (
    <>
      {usual.length > 0 ? <div className={style.pair}>{usual.map(field)}</div> : null}
      <details>
        <summary>{words.more}</summary>
        <div className={style.more}>
          <DayField name="seenOn" label={words.seenOn} start={today} />
          {terms === "none-left" ? null : ALL.filter((name) => !usual.includes(name)).map(field)}
          {terms === null || MAY_GIVE_FREE.includes(terms) ? (
            <>
              <div className={style.pair}>
                <AmountField
                  name="paidFor"
                  label={words.paidFor}
                  locale={locale}
                  words={amountWords}
                  onAmount={onPaidFor}
                />
                <AmountField
                  name="freeWith"
                  label={words.freeWith}
                  locale={locale}
                  words={amountWords}
                  onAmount={onFreeWith}
                />
              </div>
              <p className={style.quiet}>{words.freeHint}</p>
            </>
          ) : null}
          {terms === "none-left" ? null : (
            <AmountField name="fees.0.amount" label={words.orderCharge} locale={locale} words={amountWords} />
          )}
          <Field name="note" label={words.note} rows={2} />
        </div>
      </details>
    </>
  );
}
