"use client";

import {
  Fragment,
  type ReactNode,
  useActionState,
  useContext,
  useEffect,
  useId,
  useRef,
  useState,
} from "react";
import style from "./form.module.css";
import { FormContext, FormPlace } from "./form-context.client.tsx";
import { type FormAction, FRESH_FORM } from "./form-state.ts";

export type FormProps = Readonly<{
  action: FormAction;
  /** Made once when the page is drawn (newId): sent twice, the entry is still made once. */
  id?: string;
  /** What the form was drawn from (fingerprint): the action notices when it was changed elsewhere since. */
  seen?: string;
  /** Above the list of faults, e.g. "Not saved yet". */
  faultsTitle: string;
  children: ReactNode;
  className?: string;
}>;

/** Characters one form may send; the server takes a megabyte, and a letter can be four bytes. */
const MOST = 200_000;

function charactersOf(form: FormData): number {
  return [...form.values()].reduce(
    (total, value) => total + (typeof value === "string" ? value.length : value.size),
    0,
  );
}

/**
 * A form around a server action. Works without JavaScript; keeps what was typed when the action finds faults, lists them on
 * top with links to their fields, and says so when the database cannot be reached. Fields inside find their fault by name.
 */
export function Form({ action, id, seen, faultsTitle, children, className }: FormProps) {
  const [state, send] = useActionState(action, FRESH_FORM);
  const formId = useId();
  const { place, tooMuch } = useContext(FormPlace);
  const [unsent, setUnsent] = useState<string | null>(null);
  const summary = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (state.attempt === 0) return;
    // A fault folded away would be a fault nobody finds.
    for (const fault of summary.current?.closest("form")?.querySelectorAll('[id$="-fault"]') ?? [])
      fault.closest("details")?.setAttribute("open", "");
    summary.current?.focus();
  }, [state.attempt]);
  useEffect(() => {
    if (unsent !== null) summary.current?.focus();
  }, [unsent]);
  const trouble = unsent ?? state.trouble;
  const failed = state.faults.length > 0 || trouble !== null;
  return (
    <form
      action={send}
      className={className ?? style.form}
      noValidate
      onSubmit={(event) => {
        const held = charactersOf(new FormData(event.currentTarget)) > MOST;
        setUnsent(held ? tooMuch : null);
        if (held) event.preventDefault();
      }}
    >
      {id === undefined ? null : <input type="hidden" name="id" value={state.values.id?.[0] ?? id} />}
      {seen === undefined ? null : <input type="hidden" name="seen" value={state.values.seen?.[0] ?? seen} />}
      {place === "" ? null : <input type="hidden" name="place" value={place} />}
      {failed ? (
        <div ref={summary} className={style.faults} role="alert" tabIndex={-1}>
          <p className={style.faultsTitle}>{trouble ?? faultsTitle}</p>
          <ul>
            {state.faults.map((fault) => (
              <li key={`${fault.path} ${fault.text}`}>
                {fault.path === "" ? fault.text : <a href={`#${formId}-${fault.path}`}>{fault.text}</a>}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <FormContext value={{ id: formId, state }}>
        <Fragment key={state.attempt}>{children}</Fragment>
      </FormContext>
    </form>
  );
}
