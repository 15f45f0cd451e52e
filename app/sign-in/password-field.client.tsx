"use client";

import type { ReactNode } from "react";
import { FieldFrame } from "../_ui/field.client.tsx";
import style from "../_ui/field.module.css";
import { describedBy, useField } from "../_ui/form-context.client.tsx";

/** A password, never given back with a refused form. fresh: one that is being chosen. */
export function PasswordField({
  label,
  hint,
  fresh,
}: Readonly<{ label: ReactNode; hint?: ReactNode; fresh: boolean }>) {
  const { id, fault } = useField("password", "");
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <input
        type="password"
        id={id}
        name="password"
        className={style.input}
        autoComplete={fresh ? "new-password" : "current-password"}
        required
        aria-invalid={fault !== null}
        aria-describedby={describedBy(id, { hint: Boolean(hint), fault: fault !== null })}
      />
    </FieldFrame>
  );
}
