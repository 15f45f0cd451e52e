"use client";

import {
  type ChangeEvent,
  type ReactNode,
  useActionState,
  useContext,
  useEffect,
  useId,
  useRef,
  useState,
} from "react";
import { Button } from "../../_ui/button.client.tsx";
import { FieldFrame } from "../../_ui/field.client.tsx";
import style from "../../_ui/form.module.css";
import { FormContext, FormPlace } from "../../_ui/form-context.client.tsx";
import { FRESH_FORM } from "../../_ui/form-state.ts";
import { Table } from "../../_ui/table.tsx";
import { type FileAction, type FileState, MOST_BYTES } from "./file-state.ts";

const FRESH: FileState = FRESH_FORM;

export type FileFormProps = Readonly<{
  action: FileAction;
  words: Readonly<{
    file: string;
    fileHint: string;
    look: string;
    take: string;
    pending: string;
    report: string;
    faultsTitle: string;
    tooBig: string;
  }>;
  children: ReactNode;
}>;

/**
 * A file, looked at before it is taken in. The browser empties a file field with every answer: it is filled again, so that
 * what was looked at is what is taken. Without JavaScript the file is chosen once more.
 */
export function FileForm({ action, words, children }: FileFormProps) {
  const [state, send] = useActionState(action, FRESH);
  const id = useId();
  const { place } = useContext(FormPlace);
  const input = useRef<HTMLInputElement>(null);
  const said = useRef<HTMLDivElement>(null);
  const [kept, setKept] = useState<File | null>(null);
  const tooBig = kept !== null && kept.size > MOST_BYTES;
  useEffect(() => {
    if (state.attempt === 0) return;
    said.current?.focus();
    if (kept === null || input.current === null || (input.current.files?.length ?? 0) > 0) return;
    const again = new DataTransfer();
    again.items.add(kept);
    input.current.files = again.files;
  }, [state.attempt, kept]);
  const choose = (event: ChangeEvent<HTMLInputElement>) => setKept(event.target.files?.[0] ?? null);
  const { report } = state;
  const failed = state.faults.length > 0 || state.trouble !== null;
  return (
    <form
      action={send}
      className={style.form}
      noValidate
      onSubmit={(event) => {
        if (tooBig) event.preventDefault();
      }}
    >
      {place === "" ? null : <input type="hidden" name="place" value={place} />}
      {failed ? (
        <div ref={said} className={style.faults} role="alert" tabIndex={-1}>
          <p className={style.faultsTitle}>{state.trouble ?? words.faultsTitle}</p>
          <ul>
            {state.faults.map((fault) => (
              <li key={`${fault.path} ${fault.text}`}>{fault.text}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <FormContext value={{ id, state }}>
        <FieldFrame
          id={`${id}-file`}
          label={words.file}
          hint={words.fileHint}
          fault={tooBig ? words.tooBig : null}
        >
          <input
            ref={input}
            id={`${id}-file`}
            type="file"
            name="file"
            accept=".csv,.txt,.tsv,.json"
            aria-describedby={`${id}-file-hint`}
            onChange={choose}
          />
        </FieldFrame>
        <div key={state.attempt} className={style.more}>
          {children}
        </div>
      </FormContext>
      <Button kind="plain" name="step" value="look" pending={words.pending}>
        {words.look}
      </Button>
      {report ? (
        <div ref={failed ? undefined : said} role="status" tabIndex={-1}>
          <p>{report.said}</p>
          <Table caption={words.report} captionHidden cards columns={report.columns} rows={report.rows} />
          {report.more === null ? null : <p>{report.more}</p>}
        </div>
      ) : null}
      <Button name="step" value="take" pending={words.pending}>
        {words.take}
      </Button>
    </form>
  );
}
