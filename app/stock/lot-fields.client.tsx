"use client";

import { useState } from "react";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { DayField, Field } from "../_ui/field.client.tsx";
import { useField } from "../_ui/form-context.client.tsx";
import { SearchField } from "../_ui/search-field.client.tsx";
import type { LotFieldsProps } from "./lot-field-props.ts";
import { LotMore } from "./lot-more.client.tsx";

/** Whether 0 was typed: then why is asked. */
function isNothing(amount: string | null): boolean {
  return amount !== null && /^0+(\.0*)?$/.test(amount.trim());
}

/** The fields of a lot as they stand on a receipt. The unit follows the material, currency and tax the store. */
export function LotFields(props: LotFieldsProps) {
  const { materials, stores, needs, origins, copied, start, words, locale } = props;
  const [materialId, setMaterial] = useState(useField("materialId", start.materialId).value);
  const [storeId, setStore] = useState(useField("storeId", "").value);
  const [paid, setPaid] = useState<string | null>(useField("paid.amount", "").value);
  const typedCurrency = useField("paid.currency", "").value;
  const [currency, setCurrency] = useState(typedCurrency);
  const amounts = { locale, words: props.amountWords };
  const material = materials.find((known) => known.value === materialId);
  const store = stores.find((known) => known.value === storeId);
  const serving = needs.filter((need) => materialId === "" || need.materialIds.includes(materialId));
  return (
    <>
      {copied ? (
        <input type="hidden" name="materialId" value={start.materialId} />
      ) : (
        <SearchField
          name="materialId"
          label={words.material}
          choices={materials}
          start={start.materialId}
          none={words.noSuchMaterial}
          choose={words.choose}
          onChoice={setMaterial}
        />
      )}
      {copied ? (
        <input type="hidden" name="origin" value="bought" />
      ) : (
        <ChoiceField name="origin" label={words.origin} choices={origins} start="bought" />
      )}
      <AmountField
        name="quantity"
        label={words.howMany}
        start={start.quantity}
        beside={material?.unit}
        required
        {...amounts}
      />
      {copied ? null : (
        <>
          <ChoiceField
            name="storeId"
            label={words.store}
            hint={words.storeHint}
            choices={[{ value: "", label: words.noStore }, ...stores]}
            onChoice={(chosen) => {
              setStore(chosen);
              setCurrency("");
            }}
          />
          <AmountField
            name="paid.amount"
            label={words.paid}
            hint={words.paidHint}
            required
            onAmount={setPaid}
            {...amounts}
          />
          {isNothing(paid) ? (
            <Field name="givenFree" label={words.givenFree} hint={words.givenFreeHint} />
          ) : null}
          <ChoiceField
            key={`currency ${storeId}`}
            name="paid.currency"
            label={words.currency}
            choices={props.currencies}
            start={store?.currency ?? start.currency}
            onChoice={setCurrency}
          />
          {store !== undefined && currency !== "" && currency !== store.currency ? (
            <Field name="otherCurrency" label={words.otherCurrency} hint={words.otherCurrencyHint} />
          ) : null}
          <PickField
            key={`tax ${storeId}`}
            name="paid.taxIncluded"
            label={words.tax}
            starts={[store?.taxIncluded === false ? "no" : "yes"]}
            choices={[
              { value: "yes", label: words.taxIn },
              { value: "no", label: words.taxOut },
            ]}
          />
        </>
      )}
      <DayField name="orderedOn" label={words.orderedOn} start={start.today} />
      <ChoiceField
        key={`need ${materialId}`}
        name="requirementId"
        label={words.forProject}
        choices={[...serving, { value: "", label: words.forNone }]}
        start={start.needId}
      />
      <Field name="storedAt" label={words.storedAt} hint={words.storedAtHint} />
      <LotMore {...props} />
    </>
  );
}
