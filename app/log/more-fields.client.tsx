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
  terms: Terms;
  today: string;
  /** The phone's clock cannot be right: the day stands in sight and is asked. */
  askDay: boolean;
  locale: string;
  words: LogWords;
}>;

/** What goes with some prices only: dates, quantities, a note. The usual ones for the terms in sight, the rest folded away. */
export function MoreFields({ terms, today, askDay, locale, words }: MoreFieldsProps) {
  const usual = USUAL[terms];
  const seenOn = (
    <DayField
      key={`seen ${today}`}
      name="seenOn"
      label={words.seenOn}
      hint={askDay ? words.clockWrong : undefined}
      start={today}
    />
  );
  const amountWords = { readAs: words.readAs, cannotTell: words.notUnderstood };
  const field = (name: Extra) =>
    name === "from" || name === "until" ? (
      <DayField key={name} name={name} label={words[name]} />
    ) : (
      <AmountField key={name} name={name} label={words[name]} locale={locale} words={amountWords} />
    );
  return (
    <>
      {askDay ? seenOn : null}
      {usual.length > 0 ? <div className={style.pair}>{usual.map(field)}</div> : null}
      <details>
        <summary>{words.more}</summary>
        <div className={style.more}>
          {askDay ? null : seenOn}
          {terms === "none-left" ? null : ALL.filter((name) => !usual.includes(name)).map(field)}
          {MAY_GIVE_FREE.includes(terms) ? (
            <>
              <div className={style.pair}>
                <AmountField name="paidFor" label={words.paidFor} locale={locale} words={amountWords} />
                <AmountField name="freeWith" label={words.freeWith} locale={locale} words={amountWords} />
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
