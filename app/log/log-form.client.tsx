"use client";

import { useEffect, useState } from "react";
import type { Terms } from "../../lib/prices/observation.ts";
import type { AisleFacts } from "../../lib/show/aisle-facts.ts";
import { tagWithFree } from "../../lib/show/tag-with-free.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { Button } from "../_ui/button.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { Form } from "../_ui/form.client.tsx";
import type { FormAction } from "../_ui/form-state.ts";
import { SearchField } from "../_ui/search-field.client.tsx";
import style from "./log.module.css";
import { MoreFields } from "./more-fields.client.tsx";
import { Reading } from "./reading.client.tsx";
import { logWords, TERMS_CHOICES, unitWord } from "./words.ts";

export type LogFormProps = Readonly<{
  facts: AisleFacts;
  action: FormAction;
  /** Made once for this form. */
  id: string;
  locale: string;
  startMaterial: string;
  startStore: string;
}>;

/** The aisle form: one price as it stands on the tag, and what it comes to while it is typed. Needs no server to think. */
export function LogForm({ facts, action, id, locale, startMaterial, startStore }: LogFormProps) {
  const words = logWords(locale);
  const [materialId, setMaterial] = useState(startMaterial);
  const [storeId, setStore] = useState(startStore);
  const [amount, setAmount] = useState<string | null>(null);
  const [perQuantity, setPerQuantity] = useState<string | null>("1");
  const [unit, setUnit] = useState("");
  const [taxIncluded, setTaxIncluded] = useState<boolean | null>(null);
  const [terms, setTerms] = useState<Terms>("shelf");
  const [paidFor, setPaidFor] = useState<string | null>(null);
  const [freeWith, setFreeWith] = useState<string | null>(null);
  const [scripted, setScripted] = useState(false);
  useEffect(() => setScripted(true), []);
  const material = facts.materials.find((known) => known.id === materialId);
  const store = facts.stores.find((known) => known.id === storeId);
  const units = material?.units ?? [];
  const chosenUnit = units.find((one) => one === unit) ?? units[0];
  const habit = store?.pricesIncludeTax ?? false;
  const priced = terms !== "none-left";
  const amountWords = { readAs: words.readAs, cannotTell: words.notUnderstood };
  return (
    <Form action={action} id={id} faultsTitle={words.faults} className={style.form}>
      <SearchField
        name="materialId"
        label={words.material}
        choices={facts.materials.map((known) => ({ value: known.id, label: known.name }))}
        start={startMaterial}
        none={words.noSuchMaterial}
        choose={words.choose}
        onChoice={setMaterial}
      />
      <ChoiceField
        name="storeId"
        label={words.store}
        choices={facts.stores.map((known) => ({ value: known.id, label: known.name }))}
        start={startStore}
        onChoice={(next) => {
          setStore(next);
          setTaxIncluded(null);
        }}
      />
      <ChoiceField
        name="terms"
        label={words.terms}
        choices={TERMS_CHOICES}
        start="shelf"
        onChoice={(next) => {
          setTerms(TERMS_CHOICES.find((one) => one.value === next)?.value ?? "shelf");
          setPaidFor(null);
          setFreeWith(null);
        }}
      />
      {priced ? (
        <>
          <AmountField
            name="amount"
            label={words.amount}
            locale={locale}
            words={amountWords}
            big
            beside={store?.currency}
            onAmount={setAmount}
          />
          <div className={style.pair}>
            <AmountField
              name="per.quantity"
              label={words.per}
              locale={locale}
              words={amountWords}
              start="1"
              onAmount={setPerQuantity}
            />
            <ChoiceField
              key={materialId}
              name="per.unit"
              label={words.unit}
              choices={[
                ...(units.length > 0 ? [] : [{ value: "", label: words.asBought }]),
                ...units.map((one) => ({ value: one, label: unitWord(one, perQuantity ?? "1") })),
              ]}
              start={units[0] ?? ""}
              onChoice={setUnit}
            />
          </div>
          <PickField
            key={storeId}
            name="taxIncluded"
            label={words.tax}
            choices={[
              { value: "no", label: words.taxOut },
              { value: "yes", label: words.taxIn },
            ]}
            starts={[habit ? "yes" : "no"]}
            onChoice={(next) => setTaxIncluded(next === "yes")}
          />
        </>
      ) : null}
      <MoreFields
        terms={scripted ? terms : null}
        today={facts.today}
        locale={locale}
        words={words}
        onPaidFor={setPaidFor}
        onFreeWith={setFreeWith}
      />
      {priced && material && store && amount && chosenUnit ? (
        <Reading
          facts={facts}
          locale={locale}
          material={material}
          tag={tagWithFree(
            {
              amount,
              storeId,
              materialId,
              perQuantity: perQuantity ?? "0",
              unit: chosenUnit,
              taxIncluded: taxIncluded ?? habit,
            },
            paidFor,
            freeWith,
          )}
        />
      ) : null}
      <div className={style.bar}>
        <Button pending={words.keeping} wide>
          {priced ? words.keep : words.keepNothing}
        </Button>
      </div>
    </Form>
  );
}
