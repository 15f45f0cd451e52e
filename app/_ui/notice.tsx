import type { ReactNode } from "react";
import style from "./notice.module.css";

/** A short statement set off from the page. tone: what it means for the reader; the words must say it too. */
export function Notice(
  props: Readonly<{ children: ReactNode; tone?: "plain" | "good" | "warn" | "bad"; live?: boolean }>,
) {
  return (
    <div
      className={`${style.notice} ${style[props.tone ?? "plain"]}`}
      role={props.live ? "status" : undefined}
    >
      {props.children}
    </div>
  );
}

/** A caution that belongs to what stands above it: small, always readable, never hidden. */
export function Caution({ children }: Readonly<{ children: ReactNode }>) {
  return <p className={style.caution}>{children}</p>;
}
