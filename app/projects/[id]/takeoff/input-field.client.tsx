"use client";

import { lengthOf, lengthText } from "../../../../lib/measure/length-text.ts";
import type { UnitSystem } from "../../../../lib/measure/unit-system.ts";
import { FieldFrame } from "../../../_ui/field.client.tsx";
import style from "../../../_ui/field.module.css";
import type { InputField } from "./input-shapes.ts";
import type { TakeoffWords } from "./takeoff-words.ts";

export type InputProps = Readonly<{
  field: InputField;
  /** The field's name in the form. */
  name: string;
  value: string;
  fault: string | null;
  system: UnitSystem;
  words: TakeoffWords;
  onTyped: (name: string, value: string) => void;
}>;

/** A length as it was understood, where one was typed. */
function readBack({ field, value, system, words }: InputProps): string | null {
  if (field.kind !== "length") return null;
  const read = lengthOf(value, system);
  return read.ok ? `${words.readAs} ${lengthText(read.value, system)}` : "";
}

function hintOf({ field, system, words }: InputProps): string | null {
  if (field.kind === "slope") return words.slopeHint;
  if (field.kind === "area") return system === "metric" ? words.areaHintMetric : words.areaHint;
  return null;
}

/** Yes or no. */
function Flag({ field, name, value, words, onTyped }: InputProps) {
  return (
    <label className={style.choice}>
      <input
        type="checkbox"
        name={name}
        value="yes"
        checked={value !== ""}
        onChange={(event) => onTyped(name, event.target.checked ? "yes" : "")}
      />
      {words.fields[field.name]}
    </label>
  );
}

/** One thing a calculator asks; a length says under itself how it was read. */
export function Input(props: InputProps) {
  const { field, name, value, fault, words, onTyped } = props;
  if (field.kind === "flag") return <Flag {...props} />;
  const id = `in-${name}`;
  const hint = hintOf(props);
  const read = readBack(props);
  const shared = {
    id,
    name,
    value,
    className: `${style.input} ${field.kind === "text" ? "" : style.figure}`,
    "aria-invalid": fault !== null,
    "aria-describedby":
      [hint ? `${id}-hint` : "", read === null ? "" : `${id}-read`, fault ? `${id}-fault` : ""]
        .filter(Boolean)
        .join(" ") || undefined,
  };
  const label = `${words.fields[field.name]}${field.optional ? ` (${words.optional})` : ""}`;
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      {field.choices ? (
        <select {...shared} onChange={(event) => onTyped(name, event.target.value)}>
          {field.choices.map((choice) => (
            <option key={choice} value={choice}>
              {words.choices[choice]}
            </option>
          ))}
        </select>
      ) : (
        <input
          type="text"
          autoComplete="off"
          {...shared}
          onChange={(event) => onTyped(name, event.target.value)}
        />
      )}
      {read === null ? null : (
        <p className={style.readBack} id={`${id}-read`}>
          {read}
        </p>
      )}
    </FieldFrame>
  );
}
