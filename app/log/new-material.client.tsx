"use client";

import { type FormEvent, useEffect, useState } from "react";
import { v7 } from "uuid";
import { PURCHASE_UNITS } from "../../lib/measure/units.ts";
import type { SnapshotMaterial } from "../../lib/show/aisle-snapshot.ts";
import type { RowKind } from "../_offline/log-database.ts";
import { keepRows } from "../_offline/outbox.ts";
import { Button } from "../_ui/button.client.tsx";
import { ChoiceField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { FormContext } from "../_ui/form-context.client.tsx";
import { type FormFault, FRESH_FORM } from "../_ui/form-state.ts";
import style from "./aisle.module.css";
import type { Listed } from "./catalogue-list.ts";
import { faultTexts } from "./fault-texts.ts";
import form from "./log.module.css";
import type { Aisle } from "./use-aisle.client.ts";
import { type LogWords, unitWord } from "./words.ts";

type NewMaterialProps = Readonly<{
  aisle: Aisle;
  words: LogWords;
  name: string;
  onMade: (id: string) => void;
  onCancel: () => void;
}>;

const BLANK = { exemptFrom: [], recheckDays: null, lastSeen: null, seen: [], needs: [], paid: null } as const;

/** A material in two fields, its name and what it is bought by; or one tap in the catalogue, which is loaded when it is needed. */
export function NewMaterial({ aisle, words, name, onMade, onCancel }: NewMaterialProps) {
  const [found, setFound] = useState<readonly Listed[]>([]);
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  useEffect(() => {
    let wanted = true;
    void import("./catalogue-list.ts").then(
      ({ listedWith }) => wanted && setFound(listedWith(name)),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [name]);
  const none = { count: 0, first: null, lows: [] };
  const lows = { before: aisle.today, fresh: none, used: none };
  const make = async (
    kind: RowKind,
    said: Record<string, unknown>,
    plain: Omit<SnapshotMaterial, "id" | "lows">,
  ) => {
    const id = v7();
    const made = { ...plain, id, lows };
    await keepRows([
      { id, workspaceId: aisle.snapshot.workspace.id, kind, said, at: Date.now(), state: "queued", made },
    ]);
    onMade(id);
  };
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget);
    const newName = String(typed.get("name") ?? "").trim();
    setFaults(newName === "" ? faultTexts([{ path: "name", code: "missing" }], words) : []);
    const unit = PURCHASE_UNITS.find((one) => one === typed.get("purchaseUnit"));
    if (newName === "" || unit === undefined) return;
    const entry = { name: newName, category: "other", purchaseUnit: unit };
    void make("material", { entry }, { ...BLANK, name: newName, category: "other", unit, dimensions: {} });
  };
  return (
    <section className={style.part} aria-labelledby="new-material">
      <h2 id="new-material">{words.newMaterialTitle}</h2>
      {found.length === 0 ? null : (
        <>
          <p className={style.quiet}>{words.fromCatalogue}</p>
          <ul className={style.rows}>
            {found.map(({ key, plain }) => (
              <li key={key}>
                <button
                  type="button"
                  className={style.option}
                  onClick={() => void make("catalogued", { key }, { ...BLANK, ...plain })}
                >
                  {plain.name}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <FormContext value={{ id: "new", state: { ...FRESH_FORM, faults } }}>
        <form className={form.form} noValidate onSubmit={submit}>
          <Field name="name" label={words.newName} start={name} />
          <ChoiceField
            name="purchaseUnit"
            label={words.boughtBy}
            choices={PURCHASE_UNITS.map((unit) => ({ value: unit, label: unitWord(unit, "1") }))}
            start="each"
          />
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
