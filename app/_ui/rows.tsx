import type { ReactNode } from "react";
import style from "./rows.module.css";

/** A repeated group of fields inside a form, each row under its own ruled line. Left empty, a row is not sent on. */
export function Rows(props: Readonly<{ title: ReactNode; hint?: ReactNode; children: ReactNode }>) {
  return (
    <fieldset className={style.rows}>
      <legend className={style.legend}>{props.title}</legend>
      {props.hint ? <p className={style.hint}>{props.hint}</p> : null}
      {props.children}
    </fieldset>
  );
}

/** One row of a repeated group: its fields side by side where there is room. */
export function RowFields({ children, label }: Readonly<{ children: ReactNode; label: string }>) {
  return (
    <fieldset className={style.row}>
      <legend className={style.hidden}>{label}</legend>
      {children}
    </fieldset>
  );
}

/** Rows of a form are known by their place alone: the key of the row at a place. */
export function rowKey(place: number): string {
  return `row ${place}`;
}
