"use client";

import type { ReactNode } from "react";
import { type Choice, Options } from "./choice-field.client.tsx";
import { FieldFrame } from "./field.client.tsx";
import style from "./field.module.css";
import { describedBy, useField } from "./form-context.client.tsx";

export type UnitFieldProps = Readonly<{
  /** Sends `name` (the figure as typed) and `name.unit`. */
  name: string;
  label: ReactNode;
  unitLabel: string;
  hint?: ReactNode;
  start?: string;
  startUnit: string;
  units: readonly Choice[];
}>;

/** A figure with its unit beside it in one box: "92 5/8" and "inch". */
export function UnitField({ name, label, unitLabel, hint, start = "", startUnit, units }: UnitFieldProps) {
  const { id, value, fault } = useField(name, start);
  const unit = useField(`${name}.unit`, startUnit);
  const only = units.length === 1 ? (units[0] ?? null) : null;
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault ?? unit.fault}>
      <div className={style.joined}>
        <input
          id={id}
          name={name}
          type="text"
          autoComplete="off"
          className={`${style.input} ${style.figure}`}
          defaultValue={value}
          aria-invalid={fault !== null}
          aria-describedby={describedBy(id, { hint: Boolean(hint), fault: (fault ?? unit.fault) !== null })}
        />
        {only === null ? null : (
          <>
            <input type="hidden" name={`${name}.unit`} value={only.value} />
            <span className={style.beside}>{only.label}</span>
          </>
        )}
        {only !== null ? null : (
          <select
            id={unit.id}
            name={`${name}.unit`}
            className={style.input}
            defaultValue={unit.value}
            aria-label={unitLabel}
          >
            <Options choices={units} />
          </select>
        )}
      </div>
    </FieldFrame>
  );
}
