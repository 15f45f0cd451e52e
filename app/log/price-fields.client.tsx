"use client";

import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { Terms } from "../../lib/prices/observation.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import style from "./log.module.css";
import { type LogWords, TERMS_CHOICES, unitWord } from "./words.ts";

type PriceFieldsProps = Readonly<{
  words: LogWords;
  locale: string;
  /** Changes with the material: its units are others. */
  materialId: string;
  storeId: string;
  stores: readonly Readonly<{ id: string; name: string }>[];
  currency: string;
  units: readonly PurchaseUnit[];
  unit: PurchaseUnit;
  /** The amount to begin with, after the point was moved. */
  amount: string;
  taxHabit: boolean;
  terms: Terms;
  onStore: (id: string) => void;
  onTerms: (terms: Terms) => void;
  onUnit: (unit: PurchaseUnit) => void;
}>;

/** The price as it stands on the tag: the amount first, for how much, at which store, under which terms, with or without tax. */
export function PriceFields(props: PriceFieldsProps) {
  const { words, locale, materialId, storeId, stores, units, unit, terms } = props;
  const amountWords = { readAs: words.readAs, cannotTell: words.notUnderstood };
  return (
    <>
      {terms === "none-left" ? null : (
        <>
          <AmountField
            key={`amount ${props.amount}`}
            name="amount"
            label={words.amount}
            locale={locale}
            words={amountWords}
            start={props.amount}
            big
            beside={props.currency}
          />
          <div className={style.pair}>
            <AmountField
              name="per.quantity"
              label={words.per}
              locale={locale}
              words={amountWords}
              start="1"
            />
            <ChoiceField
              key={`unit ${materialId}`}
              name="per.unit"
              label={words.unit}
              choices={units.map((one) => ({ value: one, label: unitWord(one, "1") }))}
              start={unit}
              onChoice={(next) => props.onUnit(units.find((one) => one === next) ?? unit)}
            />
          </div>
        </>
      )}
      <div className={style.pair}>
        <ChoiceField
          key={`store ${stores.length} ${storeId}`}
          name="storeId"
          label={words.store}
          choices={[
            ...(storeId === "" ? [{ value: "", label: words.choose }] : []),
            ...stores.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          start={storeId}
          onChoice={props.onStore}
        />
        <ChoiceField
          name="terms"
          label={words.terms}
          choices={TERMS_CHOICES}
          start={terms}
          onChoice={(next) =>
            props.onTerms(TERMS_CHOICES.find(({ value }) => value === next)?.value ?? "shelf")
          }
        />
      </div>
      {terms === "none-left" ? null : (
        <PickField
          key={`tax ${storeId}`}
          name="taxIncluded"
          label={words.tax}
          choices={[
            { value: "no", label: words.taxOut },
            { value: "yes", label: words.taxIn },
          ]}
          starts={[props.taxHabit ? "yes" : "no"]}
        />
      )}
    </>
  );
}
