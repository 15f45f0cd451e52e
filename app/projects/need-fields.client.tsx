"use client";

import { useState } from "react";
import { AmountField, type AmountWords } from "../_ui/amount-field.client.tsx";
import { type Choice, ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { DayField } from "../_ui/field.client.tsx";
import { useField } from "../_ui/form-context.client.tsx";
import { More } from "../_ui/more.tsx";
import { RowFields, Rows, rowKey } from "../_ui/rows.tsx";
import { SearchField } from "../_ui/search-field.client.tsx";

/** A material to choose, with the units a need of it can be stated in, the one it is bought by first. */
export type NeedMaterial = Readonly<{
  value: string;
  label: string;
  units: readonly Choice[];
  /** Lumber or panels, which may carry load: accepting used ones carries its caution. */
  carriesLoad: boolean;
}>;

export type NeedStart = Readonly<{
  quantity: string;
  unit: string;
  wastePercent: string;
  neededBy: string;
  budgetUnitPrice: string;
  acceptsUsed: boolean;
  alternatives: readonly Readonly<{ materialId: string; factor: string }>[];
}>;

export type NeedWords = Readonly<{
  amount: AmountWords;
  material: string;
  noSuchMaterial: string;
  choose: string;
  quantity: string;
  unit: string;
  asBought: string;
  waste: string;
  wasteHint: string;
  neededBy: string;
  budgetUnitPrice: string;
  budgetUnitPriceHint: string;
  used: string;
  acceptsUsed: string;
  usedHint: string;
  usedCaution: string;
  more: string;
  alternative: string;
  alternativeHint: string;
  alternativeRow: string;
  factor: string;
  validFrom: string;
  validFromHint: string;
}>;

export type NeedFieldsProps = Readonly<{
  materials: readonly NeedMaterial[];
  /** A need that is changed: its material stays. */
  fixed: NeedMaterial | null;
  start: NeedStart;
  words: NeedWords;
  locale: string;
  chosen: string;
}>;

/** The fields of a need: how much of what, by when; the rarer ones folded away. The units follow the material. */
export function NeedFields({ materials, fixed, start, words, locale, chosen }: NeedFieldsProps) {
  const [materialId, setMaterial] = useState(useField("materialId", chosen).value);
  const amounts = { locale, words: words.amount };
  const material = fixed ?? materials.find((known) => known.value === materialId);
  const units = material?.units ?? [];
  const others = materials.filter((known) => known.value !== (fixed?.value ?? materialId));
  const rows = [...start.alternatives, { materialId: "", factor: "" }];
  return (
    <>
      {fixed ? null : (
        <SearchField
          name="materialId"
          label={words.material}
          choices={materials}
          start={chosen}
          none={words.noSuchMaterial}
          choose={words.choose}
          onChoice={setMaterial}
        />
      )}
      <AmountField name="quantity" label={words.quantity} start={start.quantity} required {...amounts} />
      <ChoiceField
        key={materialId}
        name="unit"
        label={words.unit}
        choices={units.length > 0 ? units : [{ value: "", label: words.asBought }]}
        start={start.unit || (units[0]?.value ?? "")}
      />
      <AmountField
        name="wastePercent"
        label={words.waste}
        hint={words.wasteHint}
        start={start.wastePercent}
        beside="%"
        {...amounts}
      />
      <DayField name="neededBy" label={words.neededBy} start={start.neededBy} />
      <AmountField
        name="budgetUnitPrice"
        label={words.budgetUnitPrice}
        hint={words.budgetUnitPriceHint}
        start={start.budgetUnitPrice}
        {...amounts}
      />
      <PickField
        name="acceptsUsed"
        label={words.used}
        hint={material?.carriesLoad ? words.usedCaution : words.usedHint}
        many
        starts={start.acceptsUsed ? ["yes"] : []}
        choices={[{ value: "yes", label: words.acceptsUsed }]}
      />
      <More title={words.more} open={start.alternatives.length > 0}>
        <Rows title={words.alternative} hint={words.alternativeHint}>
          {rows.map((row, index) => (
            <RowFields key={rowKey(index)} label={`${words.alternativeRow} ${index + 1}`}>
              <SearchField
                name={`alternatives.${index}.materialId`}
                label={words.material}
                choices={others}
                start={row.materialId}
                none={words.noSuchMaterial}
                choose={words.choose}
              />
              <AmountField
                name={`alternatives.${index}.factor`}
                label={words.factor}
                start={row.factor}
                {...amounts}
              />
            </RowFields>
          ))}
        </Rows>
        <DayField name="validFrom" label={words.validFrom} hint={words.validFromHint} />
      </More>
    </>
  );
}
