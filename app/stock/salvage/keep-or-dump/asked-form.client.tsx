"use client";

import { Fragment, type ReactNode, useId } from "react";
import style from "../../../_ui/form.module.css";
import { FormContext } from "../../../_ui/form-context.client.tsx";
import type { FormState } from "../../../_ui/form-state.ts";

/**
 * A form that asks and changes nothing: a plain GET, so that it works without scripts and its address can be kept. What was
 * typed stays, each fault stands beside its field and on top.
 */
export function AskedForm({
  state,
  faultsTitle,
  children,
}: Readonly<{ state: FormState; faultsTitle: string; children: ReactNode }>) {
  const id = useId();
  return (
    <form method="get" className={style.form} noValidate>
      {state.faults.length > 0 ? (
        <div className={style.faults} role="alert">
          <p className={style.faultsTitle}>{faultsTitle}</p>
          <ul>
            {state.faults.map((fault) => (
              <li key={`${fault.path} ${fault.text}`}>
                <a href={`#${id}-${fault.path}`}>{fault.text}</a>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <FormContext value={{ id, state }}>
        <Fragment key={JSON.stringify(state.values)}>{children}</Fragment>
      </FormContext>
    </form>
  );
}
