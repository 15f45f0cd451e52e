"use client";

import type { ReactNode } from "react";
import { FieldFrame } from "./field.client.tsx";
import style from "./field.module.css";
import { describedBy, useField } from "./form-context.client.tsx";

export type Choice = Readonly<{ value: string; label: string; group?: string }>;
export type ChoiceFieldProps = Readonly<{
  name: string;
  label: ReactNode;
  hint?: ReactNode;
  choices: readonly Choice[];
  start?: string;
  required?: boolean;
  onChoice?: (value: string) => void;
}>;

/** Choices in the order given; those with a group stand together under its name. */
export function Options({ choices }: Readonly<{ choices: readonly Choice[] }>) {
  const groups = [...new Set(choices.map((choice) => choice.group))];
  return groups.map((group) => {
    const options = choices
      .filter((choice) => choice.group === group)
      .map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ));
    return group === undefined ? (
      options
    ) : (
      <optgroup key={group} label={group}>
        {options}
      </optgroup>
    );
  });
}

/** One of a list, as the browser's own select. */
export function ChoiceField(props: ChoiceFieldProps) {
  const { name, label, hint, choices, start = "", required, onChoice } = props;
  const { id, value, fault } = useField(name, start);
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <select
        id={id}
        name={name}
        defaultValue={value}
        className={style.input}
        onChange={(event) => onChoice?.(event.target.value)}
        aria-required={required}
        aria-invalid={fault !== null}
        aria-describedby={describedBy(id, { hint: Boolean(hint), fault: fault !== null })}
      >
        <Options choices={choices} />
      </select>
    </FieldFrame>
  );
}

/** One of a few, all in sight (radios), or with `many` any of them (check boxes). starts: what is chosen to begin with. */
export function PickField(
  props: Omit<ChoiceFieldProps, "start"> & Readonly<{ starts?: readonly string[]; many?: boolean }>,
) {
  const { name, label, hint, choices, starts = [], many, onChoice } = props;
  const { id, values, fault } = useField(name, "");
  const chosen = values ?? starts;
  const described = describedBy(id, { hint: Boolean(hint), fault: fault !== null });
  return (
    <fieldset className={style.field} id={id} aria-describedby={described} tabIndex={-1}>
      <legend className={style.label}>{label}</legend>
      {hint ? (
        <p className={style.hint} id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      <div className={style.choices}>
        {choices.map((choice) => (
          <label key={choice.value} className={style.choice}>
            <input
              type={many ? "checkbox" : "radio"}
              name={name}
              value={choice.value}
              defaultChecked={chosen.includes(choice.value)}
              onChange={() => onChoice?.(choice.value)}
            />
            {choice.label}
          </label>
        ))}
      </div>
      {fault ? (
        <p className={style.fault} id={`${id}-fault`}>
          {fault}
        </p>
      ) : null}
    </fieldset>
  );
}
