"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { useEffect, useRef } from "react";
import style from "./navigation.module.css";
import type { Place } from "./places.ts";

type BarProps = Readonly<{ places: readonly Place[]; label: string }>;

function here(path: string, href: string): "page" | "true" | undefined {
  if (path === href) return "page";
  return href !== "/" && path.startsWith(`${href}/`) ? "true" : undefined;
}

/** The screens in one line under the header's edge, on a laptop. */
export function TopBar({ places, label }: BarProps) {
  const path = usePathname();
  return (
    <nav className={style.top} aria-label={label}>
      {places.map((place) => (
        <Link key={place.href} href={place.href} aria-current={here(path, place.href)}>
          {place.label}
        </Link>
      ))}
    </nav>
  );
}

/** The phone's bar: the four screens used on the move, and "More". One line at 320 px, and it opens without JavaScript. */
export function BottomBar({ places, label, more }: BarProps & Readonly<{ more: string }>) {
  const path = usePathname();
  const box = useRef<HTMLDetailsElement>(null);
  const openedOn = useRef(path);
  useEffect(() => {
    if (openedOn.current !== path) box.current?.removeAttribute("open");
    openedOn.current = path;
  }, [path]);
  const rest = places.filter((place) => !place.bar);
  const inRest = rest.some((place) => here(path, place.href));
  return (
    <nav className={style.bottom} aria-label={label}>
      {places
        .filter((place) => place.bar)
        .map((place) => (
          <Link
            key={place.href}
            href={place.href}
            aria-current={here(path, place.href)}
            className={place.main ? style.mainPlace : undefined}
          >
            {place.label}
          </Link>
        ))}
      <details ref={box} className={style.more}>
        <summary className={inRest ? style.within : undefined}>{more}</summary>
        <div>
          {rest.map((place) => (
            <Link key={place.href} href={place.href} aria-current={here(path, place.href)}>
              {place.label}
            </Link>
          ))}
        </div>
      </details>
    </nav>
  );
}
