import type { ReactNode } from "react";
import style from "./small.module.css";

/** The figure or name that a sentence is about: `t.rich("…", { b: said })`. */
export function said(chunks: ReactNode) {
  return <strong className={style.said}>{chunks}</strong>;
}
