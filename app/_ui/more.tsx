import type { ReactNode } from "react";
import style from "./form.module.css";

/** Rarer fields of a form, folded away behind what they are about. Opens without JavaScript. */
export function More({
  title,
  children,
  open,
}: Readonly<{ title: ReactNode; children: ReactNode; open?: boolean }>) {
  return (
    <details open={open}>
      <summary>{title}</summary>
      <div className={style.more}>{children}</div>
    </details>
  );
}
