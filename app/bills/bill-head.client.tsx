"use client";

import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { DayField } from "../_ui/field.client.tsx";
import { More } from "../_ui/more.tsx";
import type { BillProps } from "./bill-props.ts";

type Props = BillProps &
  Readonly<{
    storeId: string;
    startStore: string;
    quote: boolean;
    onKind: (kind: string) => void;
    onStore: (storeId: string) => void;
    onRegion: (region: string) => void;
  }>;

/** The head of a bill: what it is, whose, of which day; currency, tax and its rounding follow the store. */
export function BillHead(props: Props) {
  const { facts, roundings, currencies, words, storeId, startStore, quote, onKind, onStore, onRegion } =
    props;
  const store = facts.stores.find(({ id }) => id === storeId);
  return (
    <>
      <PickField
        name="kind"
        label={words.kind}
        starts={["receipt"]}
        choices={[
          { value: "receipt", label: words.receipt },
          { value: "quote", label: words.quote },
        ]}
        onChoice={onKind}
      />
      <ChoiceField
        name="storeId"
        label={words.store}
        choices={[
          { value: "", label: words.chooseStore },
          ...facts.stores.map(({ id, name }) => ({ value: id, label: name })),
        ]}
        start={startStore}
        onChoice={onStore}
        required
      />
      <DayField name="on" label={words.on} start={facts.today} />
      {quote ? (
        <>
          <DayField name="until" label={words.until} />
          <PickField
            name="anyQuantity"
            label={words.anyQuantity}
            many
            choices={[{ value: "yes", label: words.anyQuantityYes }]}
          />
        </>
      ) : null}
      <More title={words.taxing}>
        <PickField
          key={`tax ${storeId}`}
          name="taxIncluded"
          label={words.tax}
          starts={[store?.pricesIncludeTax === true ? "yes" : "no"]}
          choices={[
            { value: "no", label: words.taxOut },
            { value: "yes", label: words.taxIn },
          ]}
        />
        <ChoiceField
          key={`rounding ${storeId}`}
          name="taxRounding"
          label={words.taxRounding}
          hint={words.taxRoundingHint}
          choices={Object.entries(words.roundings).map(([value, label]) => ({ value, label }))}
          start={roundings[storeId] ?? "per-bill"}
        />
        <ChoiceField
          name="taxRegion"
          label={words.deliveredTo}
          hint={words.deliveredToHint}
          choices={[{ value: "", label: words.atTheStore }, ...props.regions]}
          onChoice={onRegion}
        />
        <ChoiceField
          key={`currency ${storeId}`}
          name="currency"
          label={words.currency}
          choices={currencies}
          start={store?.currency ?? facts.homeCurrency}
        />
      </More>
    </>
  );
}
