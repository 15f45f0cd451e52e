"use client";

import type { UnitSystem } from "../../../../lib/measure/unit-system.ts";
import style from "../../../_ui/field.module.css";
import { RowFields, Rows, rowKey } from "../../../_ui/rows.tsx";
import { Input } from "./input-field.client.tsx";
import type { InputRows, InputShape } from "./input-shapes.ts";
import type { TakeoffWords } from "./takeoff-words.ts";
import { isAsked, rowsFilled, type TypedInputs } from "./typed-inputs.ts";

export type InputsProps = Readonly<{
  shape: InputShape;
  /** What the names of these fields begin with. */
  at: string;
  typed: TypedInputs;
  faults: ReadonlyMap<string, string>;
  system: UnitSystem;
  words: TakeoffWords;
  onTyped: (name: string, value: string) => void;
}>;

/** Rows as far as they are filled, and one more to fill. */
function Group({ group, ...props }: Omit<InputsProps, "shape"> & Readonly<{ group: InputRows }>) {
  const { typed, words, faults } = props;
  const at = `${props.at}${group.name}`;
  const shown = Math.min(rowsFilled(group.rows, typed, `${at}.`) + 1, group.most);
  const fault = faults.get(at) ?? null;
  return (
    <Rows title={words.rows[group.name]}>
      {fault === null ? null : <p className={style.fault}>{fault}</p>}
      {Array.from({ length: shown }, (_, row) => (
        <RowFields key={rowKey(row)} label={`${words.row[group.name]} ${row + 1}`}>
          <Inputs {...props} shape={group.rows} at={`${at}.${row}.`} />
        </RowFields>
      ))}
    </Rows>
  );
}

/** Everything a calculator asks. */
export function Inputs({ shape, ...props }: InputsProps) {
  const { at, typed, faults } = props;
  return shape.map((item) => {
    if ("rows" in item) return <Group key={item.name} group={item} {...props} />;
    const name = `${at}${item.name}`;
    if (!isAsked(item, typed, at)) return null;
    return (
      <Input
        key={name}
        field={item}
        name={name}
        value={typed[name] ?? ""}
        fault={faults.get(name) ?? null}
        system={props.system}
        words={props.words}
        onTyped={props.onTyped}
      />
    );
  });
}
