"use client";

import { type FormEvent, useState } from "react";
import { v7 } from "uuid";
import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { dayText } from "../../lib/show/day-text.ts";
import type { LoggedPrice } from "../../lib/show/logged-price.ts";
import { quantityText } from "../../lib/show/money-text.ts";
import { parseAmount, readBack } from "../../lib/show/parse-amount.ts";
import { keepRows } from "../_offline/outbox.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { Button } from "../_ui/button.client.tsx";
import { ChoiceField } from "../_ui/choice-field.client.tsx";
import { FormContext } from "../_ui/form-context.client.tsx";
import { type FormFault, FRESH_FORM } from "../_ui/form-state.ts";
import { faultTexts } from "./fault-texts.ts";
import style from "./log.module.css";
import { aisleNames } from "./names.ts";
import type { Aisle } from "./use-aisle.client.ts";
import { logWords, unitWord } from "./words.ts";

type BoughtProps = Readonly<{
  aisle: Aisle;
  observation: Observation;
  logged: LoggedPrice;
  unit: PurchaseUnit;
  locale: string;
  onBought: (id: string, quantity: string) => void;
}>;

/** How many were bought and for which need: price, lot and what it is set aside for are one entry, sent like any other. */
export function Bought({ aisle, observation, logged, unit, locale, onBought }: BoughtProps) {
  const words = logWords(locale);
  const names = aisleNames(aisle.snapshot);
  const first = logged.needs[0];
  const limit = logged.offer?.maxQuantity;
  const start = first ? (limit?.lessThan(first.open) ? limit : first.open).toFixed() : "";
  const [quantity, setQuantity] = useState<string | null>(start || null);
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  const choices = [
    ...logged.needs.map((need) => ({
      value: need.requirementId,
      label: words.needLine(
        names.project(need.projectId),
        quantityText(need.open, locale),
        unitWord(unit, need.open.toFixed()),
        dayText(need.neededBy, locale),
      ),
    })),
    { value: "", label: words.forNone },
  ];
  const record = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const amount = parseAmount(String(form.get("quantity") ?? ""), locale);
    const isNone = amount === null || !/[1-9]/.test(amount);
    setFaults(
      isNone ? faultTexts([{ path: "quantity", code: amount ? "not-positive" : "missing" }], words) : [],
    );
    if (isNone) return;
    const { id: observationId, materialId, storeId, terms, seenOn: orderedOn } = observation;
    const entry = {
      ...{ materialId, storeId, observationId, terms, orderedOn },
      origin: "bought",
      quantity: amount,
    };
    const id = v7();
    const requirementId = String(form.get("requirementId") ?? "") || null;
    await keepRows([
      {
        id,
        workspaceId: aisle.snapshot.workspace.id,
        kind: "bought",
        said: { entry, requirementId },
        at: Date.now(),
        state: "queued",
        restsOn: [observationId],
      },
    ]);
    onBought(id, amount);
  };
  return (
    <section className={style.bought} aria-labelledby="bought">
      <h2 id="bought">{words.boughtTitle}</h2>
      <p className={style.quiet}>{words.boughtNote}</p>
      <FormContext value={{ id: "bought", state: { ...FRESH_FORM, faults } }}>
        <form className={style.form} noValidate onSubmit={(event) => void record(event)}>
          <AmountField
            name="quantity"
            label={words.howMany}
            locale={locale}
            words={{ readAs: words.readAs, cannotTell: words.notUnderstood }}
            start={start}
            beside={unitWord(unit, "2")}
            onAmount={setQuantity}
          />
          <ChoiceField
            name="requirementId"
            label={words.forWhat}
            choices={choices}
            start={choices[0]?.value ?? ""}
          />
          <Button kind="plain" wide>
            {words.bought(quantity ? readBack(quantity, locale) : "…")}
          </Button>
        </form>
      </FormContext>
    </section>
  );
}
