"use client";

import { type FormEvent, useState } from "react";
import { v7 } from "uuid";
import type { SnapshotStore } from "../../lib/show/aisle-snapshot.ts";
import { keepRows } from "../_offline/outbox.ts";
import { Button } from "../_ui/button.client.tsx";
import { ChoiceField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { FormContext } from "../_ui/form-context.client.tsx";
import { type FormFault, FRESH_FORM } from "../_ui/form-state.ts";
import style from "./aisle.module.css";
import { faultTexts } from "./fault-texts.ts";
import form from "./log.module.css";
import type { Aisle } from "./use-aisle.client.ts";
import type { LogWords } from "./words.ts";

type NewStoreProps = Readonly<{
  aisle: Aisle;
  words: LogWords;
  onMade: (id: string) => void;
  onCancel: () => void;
}>;

/** The money a store across the border counts in, by its region's country; the rest count in home money until Settings say so. */
const CURRENCY_OF: Readonly<Record<string, SnapshotStore["currency"]>> = { CA: "CAD", US: "USD" };

/** A store in two fields, its name and its tax region; the rest is said later, in Settings. */
export function NewStore({ aisle, words, onMade, onCancel }: NewStoreProps) {
  const { snapshot } = aisle;
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget);
    const name = String(typed.get("name") ?? "").trim();
    setFaults(name === "" ? faultTexts([{ path: "name", code: "missing" }], words) : []);
    if (name === "") return;
    const taxRegion = String(typed.get("taxRegion") ?? snapshot.taxRegion);
    const country = snapshot.regions.find(({ code }) => code === taxRegion)?.country ?? taxRegion.slice(0, 2);
    const currency = CURRENCY_OF[country] ?? snapshot.homeCurrency;
    const id = v7();
    const plain = { id, name, taxRegion, currency, pricesIncludeTax: false, discounts: [] };
    const made: SnapshotStore = { ...plain, importCharges: null, distanceKm: null, archivedOn: null };
    await keepRows([
      {
        id,
        workspaceId: snapshot.workspace.id,
        kind: "store",
        said: { entry: { name, taxRegion, currency } },
        at: Date.now(),
        state: "queued",
        made,
      },
    ]);
    onMade(id);
  };
  return (
    <section className={style.part} aria-labelledby="new-store">
      <h2 id="new-store">{words.newStoreTitle}</h2>
      <FormContext value={{ id: "store", state: { ...FRESH_FORM, faults } }}>
        <form className={form.form} noValidate onSubmit={(event) => void submit(event)}>
          <Field name="name" label={words.newName} />
          {aisle.known ? (
            <ChoiceField
              name="taxRegion"
              label={words.taxRegion}
              choices={snapshot.regionNames.map(({ code, name }) => ({ value: code, label: name }))}
              start={snapshot.taxRegion}
            />
          ) : null}
          <Button kind="plain" wide>
            {words.makeIt}
          </Button>
        </form>
      </FormContext>
      <button type="button" className={style.link} onClick={onCancel}>
        {words.never}
      </button>
    </section>
  );
}
