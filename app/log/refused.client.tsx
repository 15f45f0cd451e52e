"use client";

import { type FormEvent, useState } from "react";
import { v7 } from "uuid";
import { parseAmount } from "../../lib/show/parse-amount.ts";
import type { Row } from "../_offline/log-database.ts";
import { keepRows, mendRow, takeOut } from "../_offline/outbox.ts";
import field from "../_ui/field.module.css";
import look from "../_ui/notice.module.css";
import style from "./aisle.module.css";
import { fieldName } from "./fault-texts.ts";
import { aisleNames } from "./names.ts";
import { rowWords } from "./row-words.ts";
import { Tap } from "./tap.client.tsx";
import type { Aisle } from "./use-aisle.client.ts";
import type { LogWords } from "./words.ts";

type RefusedProps = Readonly<{ aisle: Aisle; words: LogWords; locale: string }>;
type Entry = Readonly<Record<string, unknown>>;

/** Which field of a refused entry is put right here, by its first reason; null: it can only be tried again or thrown away. */
function mendable(row: Row): "amount" | "seenOn" | "name" | "storeId" | "materialId" | "quantity" | null {
  const entry = row.said.entry as Entry | undefined;
  const path = row.errors?.[0]?.path ?? "";
  const fields = ["amount", "seenOn", "name", "storeId", "materialId", "quantity"] as const;
  return fields.find((name) => name === path && entry !== undefined && path in entry) ?? null;
}

function Mend({ row, aisle, words, locale }: RefusedProps & Readonly<{ row: Row }>) {
  const at = mendable(row);
  const entry = (row.said.entry ?? {}) as Entry;
  const choices =
    at === "storeId" ? aisle.snapshot.stores : at === "materialId" ? aisle.snapshot.materials : null;
  const used = row.errors?.some(({ code }) => code === "used-id");
  const again = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = String(new FormData(event.currentTarget).get("value") ?? "").trim();
    const isAmount = at === "amount" || at === "quantity";
    const value = isAmount ? (parseAmount(typed, locale) ?? typed) : typed;
    const said = at === null ? row.said : { ...row.said, entry: { ...entry, [at]: value } };
    void mendRow(row.id, { id: used ? v7() : row.id, said });
  };
  const label = at === null ? "" : words.mendField[at];
  return (
    <form className={style.mend} onSubmit={again}>
      {at === null ? null : choices ? (
        <select name="value" aria-label={label} className={field.input} defaultValue={String(entry[at])}>
          <option value="">{words.choose}</option>
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      ) : (
        <input
          name="value"
          aria-label={label}
          type={at === "seenOn" ? "date" : "text"}
          className={field.input}
          defaultValue={String(entry[at])}
        />
      )}
      <button type="submit" className={style.link}>
        {words.sendAgain}
      </button>
    </form>
  );
}

/** Entries the server refused: each with its reason, to be put right or thrown away; nothing of them is lost unasked. */
export function Refused(props: RefusedProps) {
  const { aisle, words, locale } = props;
  const [thrown, setThrown] = useState<Row | null>(null);
  const refused = aisle.rows.outbox.filter(({ state }) => state === "rejected");
  const names = aisleNames(aisle.snapshot);
  return (
    <>
      {thrown === null ? null : (
        <div className={look.undo} role="status">
          <p>{words.thrownAway(rowWords(thrown, names, words, locale))}</p>
          <Tap
            kind="quiet"
            onTap={() => {
              void keepRows([thrown]);
              setThrown(null);
            }}
          >
            {words.bringBack}
          </Tap>
        </div>
      )}
      {refused.length === 0 ? null : (
        <section className={`${look.notice} ${look.bad}`} aria-labelledby="refused">
          <h2 id="refused">{words.refusedTitle(refused.length)}</h2>
          <ul className={style.rows}>
            {refused.map((row) => (
              <li key={row.id}>
                <p>{rowWords(row, names, words, locale)}</p>
                <p className={style.reason}>
                  {(row.errors ?? [])
                    .map(
                      ({ path, message }) => `${fieldName(path, words)}: ${message.replace(path, "").trim()}`,
                    )
                    .join("; ")}
                </p>
                <Mend row={row} {...props} />
                <Tap
                  kind="quiet"
                  onTap={() => {
                    void takeOut(row.id);
                    setThrown(row);
                  }}
                >
                  {words.throwAway}
                </Tap>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
