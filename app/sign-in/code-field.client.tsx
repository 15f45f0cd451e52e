"use client";

import { type ReactNode, useEffect, useRef } from "react";
import { FieldFrame } from "../_ui/field.client.tsx";
import style from "../_ui/field.module.css";
import { describedBy, useField } from "../_ui/form-context.client.tsx";

/** A one-time code. A link carries it behind the #, which no server and no log ever sees. */
export function CodeField({ label }: Readonly<{ label: ReactNode }>) {
  const { id, value, fault } = useField("code", "");
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const carried = window.location.hash.slice(1);
    if (carried === "" || field.current === null) return;
    if (field.current.value === "") field.current.value = decodeURIComponent(carried);
    window.history.replaceState(null, "", window.location.pathname);
  }, []);
  return (
    <FieldFrame id={id} label={label} fault={fault}>
      <input
        ref={field}
        id={id}
        name="code"
        defaultValue={value}
        className={`${style.input} ${style.figure}`}
        autoComplete="one-time-code"
        autoCapitalize="characters"
        spellCheck={false}
        aria-required
        aria-invalid={fault !== null}
        aria-describedby={describedBy(id, { hint: false, fault: fault !== null })}
      />
    </FieldFrame>
  );
}
