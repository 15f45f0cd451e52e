"use client";

import { useState } from "react";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { useField } from "../_ui/form-context.client.tsx";
import type { BillProps } from "./bill-props.ts";
import { OF_THIS_BILL } from "./bill-typed.ts";

type Props = BillProps & Readonly<{ at: string; materialId: string; currency: string }>;

/** Goods handed back: the fee kept, as a percent or an amount, taxed or not, and the lot they leave. */
export function HandedBackFields({ at, materialId, currency, lots, words, amountWords, locale }: Props) {
  const amounts = { locale, words: amountWords };
  const [back, setBack] = useState((useField(`${at}.handedBack`, "").values ?? []).includes("yes"));
  return (
    <>
      <PickField
        name={`${at}.handedBack`}
        label={words.handedBack}
        many
        choices={[{ value: "yes", label: words.handedBackYes }]}
        onChoice={() => setBack(!back)}
      />
      {back ? (
        <>
          <ChoiceField
            name={`${at}.returned.lotId`}
            label={words.ofLot}
            hint={words.ofLotHint}
            choices={[
              { value: "", label: words.ofNoLot },
              { value: OF_THIS_BILL, label: words.ofThisBill },
              ...lots.filter((lot) => lot.materialId === materialId),
            ]}
          />
          <AmountField name={`${at}.returned.percent`} label={words.restocking} beside="%" {...amounts} />
          <AmountField
            name={`${at}.returned.amount`}
            label={words.restockingAmount}
            beside={currency}
            {...amounts}
          />
          <PickField
            name={`${at}.returned.untaxed`}
            label={words.restockingUntaxed}
            many
            choices={[{ value: "yes", label: words.restockingUntaxedYes }]}
          />
        </>
      ) : null}
    </>
  );
}
