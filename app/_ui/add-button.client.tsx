"use client";

import type { ReactNode } from "react";
import style from "./button.module.css";

/** Adds to what stands on the page; sends nothing. */
export function AddButton({ children, onAdd }: Readonly<{ children: ReactNode; onAdd: () => void }>) {
  return (
    <button type="button" className={`${style.button} ${style.plain}`} onClick={onAdd}>
      {children}
    </button>
  );
}
