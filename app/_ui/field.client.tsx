"use client";

import type { HTMLInputAutoCompleteAttribute, ReactNode } from "react";
import style from "./field.module.css";
import { describedBy, useField } from "./form-context.client.tsx";

export type FieldFrameProps = Readonly<{
  id: string;
  label: ReactNode;
  hint?: ReactNode;
  fault: string | null;
  children: ReactNode;
}>;

/** Label, hint, the control, and its fault in words. */
export function FieldFrame({ id, label, hint, fault, children }: FieldFrameProps) {
  return (
    <div className={style.field}>
      <label className={style.label} htmlFor={id}>
        {label}
      </label>
      {hint ? (
        <p className={style.hint} id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {children}
      {fault ? (
        <p className={style.fault} id={`${id}-fault`}>
          {fault}
        </p>
      ) : null}
    </div>
  );
}

export type FieldProps = Readonly<{
  name: string;
  label: ReactNode;
  hint?: ReactNode;
  start?: string;
  required?: boolean;
  rows?: number;
  placeholder?: string;
  autoComplete?: HTMLInputAutoCompleteAttribute;
  inputMode?: "text" | "numeric" | "url" | "email";
}>;

/** A line of text; several lines with `rows`. Keeps what was typed and shows the fault of its name. `start`: text to begin with. */
export function Field({ name, label, hint, start = "", rows, required, ...rest }: FieldProps) {
  const { id, value, fault } = useField(name, start);
  const shared = {
    id,
    name,
    defaultValue: value,
    className: style.input,
    "aria-required": required,
    "aria-invalid": fault !== null,
    "aria-describedby": describedBy(id, { hint: Boolean(hint), fault: fault !== null }),
    ...rest,
  };
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      {rows ? <textarea rows={rows} {...shared} /> : <input type="text" {...shared} />}
    </FieldFrame>
  );
}

/** A day, with the browser's own picker. start: YYYY-MM-DD. */
export function DayField({
  name,
  label,
  hint,
  start = "",
}: Pick<FieldProps, "name" | "label" | "hint" | "start">) {
  const { id, value, fault } = useField(name, start);
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <input
        type="date"
        id={id}
        name={name}
        defaultValue={value}
        className={`${style.input} ${style.figure}`}
        aria-invalid={fault !== null}
        aria-describedby={describedBy(id, { hint: Boolean(hint), fault: fault !== null })}
      />
    </FieldFrame>
  );
}
