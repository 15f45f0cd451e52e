"use client";

import type { ReactNode } from "react";
import { useFormStatus } from "react-dom";
import style from "./button.module.css";

export type ButtonProps = Readonly<{
  children: ReactNode;
  /** Shown while the form is on its way; the button then ignores further presses. */
  pending?: ReactNode;
  kind?: "main" | "plain" | "quiet";
  name?: string;
  value?: string;
  wide?: boolean;
  label?: string;
}>;

/** Sends the form around it. main: the one thing to do; plain: another; quiet: like a link. */
export function Button({ children, pending, kind = "main", name, value, wide, label }: ButtonProps) {
  const status = useFormStatus();
  return (
    <button
      type="submit"
      name={name}
      value={value}
      aria-label={label}
      aria-disabled={status.pending}
      onClick={(event) => {
        if (status.pending) event.preventDefault();
      }}
      className={`${style.button} ${style[kind]} ${wide ? style.wide : ""}`}
    >
      {status.pending && pending ? pending : children}
    </button>
  );
}
