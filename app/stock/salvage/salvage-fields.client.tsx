"use client";

import { useContext, useState } from "react";
import { AddButton } from "../../_ui/add-button.client.tsx";
import { AmountField, type AmountWords } from "../../_ui/amount-field.client.tsx";
import { type Choice, ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { FormContext, useField } from "../../_ui/form-context.client.tsx";
import { RowFields, Rows, rowKey } from "../../_ui/rows.tsx";
import { SearchField } from "../../_ui/search-field.client.tsx";
import type { SalvageWords } from "./salvage-words.ts";

/** A material to choose, with what a quantity of it is counted in. */
export type SalvageMaterial = Readonly<{ value: string; label: string; unit: string }>;
export type SalvageStart = Readonly<{
  materialId: string;
  reclaimedFrom: string;
  projectId: string;
  hours: string;
  hourlyRate: string;
  hauling: string;
  purchasePrice: string;
  currency: string;
  condition: string;
  tally: readonly Readonly<{ pieces: string; length: string }>[];
  quantity: string;
  on: string;
  note: string;
}>;
export type SalvageFieldsProps = Readonly<{
  materials: readonly SalvageMaterial[];
  /** Salvage that is corrected: its material and its place stay. */
  fixed: SalvageMaterial | null;
  projects: readonly Choice[];
  currencies: readonly Choice[];
  start: SalvageStart;
  words: SalvageWords;
  amountWords: AmountWords;
  locale: string;
}>;

const LEAST_ROWS = 4;
const MOST_ROWS = 200;

/** How many rows were sent back with what was typed in them. */
function useRowsTyped(): number {
  const { state } = useContext(FormContext);
  const numbers = Object.keys(state.values).flatMap((name) => /^tally\.(\d+)\./.exec(name)?.[1] ?? []);
  return Math.max(0, ...numbers.map((number) => Number(number) + 1));
}

function Tally({ start, words, amountWords, locale }: SalvageFieldsProps) {
  const [rows, setRows] = useState(Math.max(LEAST_ROWS, start.tally.length, useRowsTyped()));
  return (
    <Rows title={words.tally} hint={words.tallyHint}>
      {Array.from({ length: rows }, (_, row) => (
        <RowFields key={rowKey(row)} label={`${words.tallyRow} ${row + 1}`}>
          <AmountField
            name={`tally.${row}.pieces`}
            label={words.pieces}
            start={start.tally[row]?.pieces ?? ""}
            locale={locale}
            words={amountWords}
          />
          <Field name={`tally.${row}.length`} label={words.length} start={start.tally[row]?.length ?? ""} />
        </RowFields>
      ))}
      {rows < MOST_ROWS ? <AddButton onAdd={() => setRows(rows + 1)}>{words.addRow}</AddButton> : null}
    </Rows>
  );
}

/** The fields of salvage: what, where from, how many of which length, what it took. */
export function SalvageFields(props: SalvageFieldsProps) {
  const { materials, fixed, projects, currencies, start, words, locale } = props;
  const [materialId, setMaterial] = useState(useField("materialId", start.materialId).value);
  const amounts = { locale, words: props.amountWords };
  const unit = (fixed ?? materials.find(({ value }) => value === materialId))?.unit;
  return (
    <>
      {fixed === null ? (
        <SearchField
          name="materialId"
          label={words.material}
          choices={materials}
          start={start.materialId}
          none={words.noSuchMaterial}
          choose={words.choose}
          onChoice={setMaterial}
        />
      ) : null}
      <Field name="reclaimedFrom" label={words.from} hint={words.fromHint} start={start.reclaimedFrom} />
      {projects.length > 1 ? (
        <ChoiceField name="projectId" label={words.project} choices={projects} start={start.projectId} />
      ) : null}
      <Tally {...props} />
      <AmountField
        name="quantity"
        label={words.quantity}
        hint={words.quantityHint}
        start={start.quantity}
        beside={unit}
        {...amounts}
      />
      <AmountField
        name="condition"
        label={words.conditionPercent}
        hint={words.conditionHint}
        start={start.condition}
        beside="%"
        required
        {...amounts}
      />
      <AmountField name="hours" label={words.hours} start={start.hours} {...amounts} />
      <AmountField
        name="hourlyRate"
        label={words.hourlyRate}
        hint={words.hourlyRateHint}
        start={start.hourlyRate}
        {...amounts}
      />
      <AmountField name="hauling" label={words.hauling} start={start.hauling} {...amounts} />
      <AmountField
        name="purchasePrice"
        label={words.purchasePrice}
        hint={words.purchasePriceHint}
        start={start.purchasePrice}
        {...amounts}
      />
      <ChoiceField name="currency" label={words.currency} choices={currencies} start={start.currency} />
      <DayField name="on" label={words.on} start={start.on} />
      {fixed === null ? <Field name="storedAt" label={words.storedAt} /> : null}
      <Field name="note" label={words.note} rows={2} start={start.note} />
    </>
  );
}
