import Link from "next/link";
import type { ReactNode } from "react";
import style from "./links-list.module.css";

export type ListedLink = Readonly<{ href: string; title: ReactNode; text: ReactNode }>;

/** Places to go, each with what stands there now, in ruled lines. */
export function LinksList({ links }: Readonly<{ links: readonly ListedLink[] }>) {
  return (
    <ul className={style.list}>
      {links.map((link) => (
        <li key={link.href}>
          <Link href={link.href}>
            <strong>{link.title}</strong>
            <span>{link.text}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
