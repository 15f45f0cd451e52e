import type { ReactNode } from "react";
import style from "./notice.module.css";

/** Nothing here yet: says what would be here and offers the next step. action: usually one LinkButton. */
export function EmptyState(props: Readonly<{ title: string; children: ReactNode; action?: ReactNode }>) {
  return (
    <section className={style.empty}>
      <h2>{props.title}</h2>
      <p>{props.children}</p>
      {props.action}
    </section>
  );
}
