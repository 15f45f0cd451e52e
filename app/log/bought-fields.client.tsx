"use client";

import { useState } from "react";
import { readBack } from "../../lib/show/parse-amount.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { Button } from "../_ui/button.client.tsx";
import { type Choice, ChoiceField } from "../_ui/choice-field.client.tsx";
import { Form } from "../_ui/form.client.tsx";
import type { FormAction } from "../_ui/form-state.ts";
import style from "./log.module.css";
import { logWords } from "./words.ts";

type BoughtFieldsProps = Readonly<{
  action: FormAction;
  id: string;
  locale: string;
  start: string;
  unit: string;
  choices: readonly Choice[];
  hidden: Readonly<Record<string, string>>;
}>;

/** How many were bought and for which need; the button says the number it will record. */
export function BoughtFields({ action, id, locale, start, unit, choices, hidden }: BoughtFieldsProps) {
  const words = logWords(locale);
  const [quantity, setQuantity] = useState<string | null>(start);
  return (
    <section className={style.bought} aria-labelledby="bought">
      <h2 id="bought">{words.boughtTitle}</h2>
      <p className={style.quiet}>{words.boughtNote}</p>
      <Form action={action} id={id} faultsTitle={words.faults} className={style.form}>
        {Object.entries(hidden).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <AmountField
          name="quantity"
          label={words.howMany}
          locale={locale}
          words={{ readAs: words.readAs, cannotTell: words.notUnderstood }}
          start={start}
          beside={unit}
          onAmount={setQuantity}
        />
        <ChoiceField
          name="requirementId"
          label={words.forWhat}
          choices={choices}
          start={choices[0]?.value ?? ""}
        />
        <Button kind="plain" pending={words.boughtSaving} wide>
          {words.bought(quantity ? readBack(quantity, locale) : "…")}
        </Button>
      </Form>
    </section>
  );
}
