"use client";

import { useEffect, useRef } from "react";
import look from "../_ui/form.module.css";
import type { FormFault } from "../_ui/form-state.ts";

type FaultsProps = Readonly<{ faults: readonly FormFault[]; title: string; full: boolean }>;

/** What has to be put right before the price is kept, with links to the fields; or that the phone has no room. */
export function Faults({ faults, title, full }: FaultsProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (faults.length === 0 && !full) return;
    // A fault folded away would be a fault nobody finds.
    for (const fault of box.current?.closest("form")?.querySelectorAll('[id$="-fault"]') ?? [])
      fault.closest("details")?.setAttribute("open", "");
    box.current?.focus();
  }, [faults, full]);
  if (faults.length === 0 && !full) return null;
  return (
    <div ref={box} className={look.faults} role="alert" tabIndex={-1}>
      <p className={look.faultsTitle}>{title}</p>
      <ul>
        {faults.map((fault) => (
          <li key={`${fault.path} ${fault.text}`}>
            <a href={`#log-${fault.path}`}>{fault.text}</a>
          </li>
        ))}
      </ul>
    </div>
  );
}
