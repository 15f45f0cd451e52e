import Link from "next/link";
import type { ReactNode } from "react";
import style from "./button.module.css";

/** A link that looks like a button: goes somewhere, changes nothing. */
export function LinkButton(
  props: Readonly<{ href: string; children: ReactNode; kind?: "main" | "plain" | "quiet"; wide?: boolean }>,
) {
  const { href, children, kind = "plain", wide } = props;
  return (
    <Link href={href} className={`${style.button} ${style[kind]} ${wide ? style.wide : ""}`}>
      {children}
    </Link>
  );
}
