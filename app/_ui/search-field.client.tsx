"use client";

import { Combobox } from "@base-ui/react/combobox";
import { type ReactNode, useState } from "react";
import { hasEveryWord } from "../../lib/show/every-word.ts";
import type { Choice } from "./choice-field.client.tsx";
import { FieldFrame } from "./field.client.tsx";
import style from "./field.module.css";
import { describedBy, useField } from "./form-context.client.tsx";
import search from "./search-field.module.css";

export type SearchFieldProps = Readonly<{
  name: string;
  label: ReactNode;
  hint?: ReactNode;
  choices: readonly Choice[];
  start?: string;
  /** Said when no choice has the words typed. */
  none: string;
  /** The empty choice of the plain list that stands here without JavaScript. */
  choose: string;
  onChoice?: (value: string) => void;
}>;

const LISTED = 50;

/**
 * One of many, found by any of its words. Sends the chosen value under `name`; without JavaScript a plain list does.
 * An action reads the name with `typedAll` and takes the first: only one of the two controls ever sends a value.
 */
export function SearchField(props: SearchFieldProps) {
  const { name, label, hint, choices, start = "", none, choose, onChoice } = props;
  const { id, value, fault } = useField(name, start);
  const [chosen, setChosen] = useState(() => choices.find((choice) => choice.value === value) ?? null);
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <input type="hidden" name={name} value={chosen?.value ?? ""} />
      <Combobox.Root
        items={choices}
        value={chosen}
        onValueChange={(next: Choice | null) => {
          setChosen(next);
          onChoice?.(next?.value ?? "");
        }}
        filter={(choice: Choice, typed: string) => hasEveryWord(choice.label, typed)}
        limit={LISTED}
        autoHighlight
      >
        <div className={search.box} data-scripted>
          <Combobox.Input
            id={id}
            className={style.input}
            enterKeyHint="next"
            autoCapitalize="none"
            spellCheck={false}
            aria-invalid={fault !== null}
            aria-describedby={describedBy(id, { hint: Boolean(hint), fault: fault !== null })}
          />
          <span aria-hidden="true" className={search.arrow} />
        </div>
        <Combobox.Portal>
          <Combobox.Positioner sideOffset={4} className={search.position}>
            <Combobox.Popup className={search.popup}>
              <Combobox.Empty className={search.none}>{none}</Combobox.Empty>
              <Combobox.List>
                {(choice: Choice) => (
                  <Combobox.Item key={choice.value} value={choice} className={search.item}>
                    {choice.label}
                  </Combobox.Item>
                )}
              </Combobox.List>
            </Combobox.Popup>
          </Combobox.Positioner>
        </Combobox.Portal>
      </Combobox.Root>
      <noscript>
        <style>{"[data-scripted]{display:none}"}</style>
        <select name={name} defaultValue={value} className={style.input} aria-label={choose}>
          <option value="">{choose}</option>
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      </noscript>
    </FieldFrame>
  );
}
