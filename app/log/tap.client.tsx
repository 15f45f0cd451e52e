"use client";

import type { ReactNode } from "react";
import look from "../_ui/button.module.css";

/** A button that does something here, on the phone, and sends no form. */
export function Tap(
  props: Readonly<{ children: ReactNode; onTap: () => void; kind?: "plain" | "quiet"; label?: string }>,
) {
  return (
    <button
      type="button"
      aria-label={props.label}
      className={`${look.button} ${look[props.kind ?? "plain"]}`}
      onClick={props.onTap}
    >
      {props.children}
    </button>
  );
}
