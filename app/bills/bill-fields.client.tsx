"use client";

import { memo, useCallback, useEffect, useMemo, useRef, useState } from "react";
import { within } from "../../lib/calendar/local-date.ts";
import { type BillSoFar, billSoFar, regionOfBill } from "../../lib/show/bill-so-far.ts";
import { AddButton } from "../_ui/add-button.client.tsx";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { useField } from "../_ui/form-context.client.tsx";
import { More } from "../_ui/more.tsx";
import { Rows, rowKey } from "../_ui/rows.tsx";
import { BillHead } from "./bill-head.client.tsx";
import { BillLine } from "./bill-line.client.tsx";
import { BillFees, BillMore } from "./bill-more.client.tsx";
import type { BillProps } from "./bill-props.ts";
import { RunningTotals, TotalSoFar } from "./bill-totals.client.tsx";
import { lineRows, typedBill } from "./bill-typed.ts";
import style from "./bills.module.css";

type Read = Readonly<{ soFar: BillSoFar | null; nets: ReadonlyMap<number, string>; change: number }>;
/** Drawn again only when something of its own changes: a letter typed in one line costs the others nothing. */
const Line = memo(BillLine);
const FIRST_ROWS = "2";
const MOST_ROWS = 200;

function readForm(form: HTMLFormElement, { facts, locale }: Pick<BillProps, "facts" | "locale">) {
  const sent = new FormData(form);
  const soFar = billSoFar(typedBill(sent, locale), facts, locale);
  const nets = lineRows(sent).flatMap((row, at) => {
    const net = soFar?.rows[at] ?? null;
    return net === null ? [] : [[row, net] as const];
  });
  return { soFar, nets: new Map(nets) };
}

/** A receipt or quote, line by line, with what it comes to while it is typed. Adding a line loses nothing typed. */
export function BillFields(props: BillProps & Readonly<{ startStore: string }>) {
  const { facts, words, locale, startStore } = props;
  const box = useRef<HTMLDivElement>(null);
  const [rows, setRows] = useState(Number(useField("rows", FIRST_ROWS).value));
  const [quote, setQuote] = useState(useField("kind", "receipt").value === "quote");
  const [storeId, setStore] = useState(useField("storeId", startStore).value);
  const [deliveredTo, setDeliveredTo] = useState(useField("taxRegion", "").value);
  const [change, setChange] = useState(0);
  const [read, setRead] = useState<Read>({ soFar: null, nets: new Map(), change: -1 });
  const changed = useCallback(() => setChange((before) => before + 1), []);

  // After the page is drawn with the change: what a choice sets (a hidden field, a unit) is in the form only then.
  useEffect(() => {
    const form = box.current?.closest("form");
    if (form) setRead({ ...readForm(form, { facts, locale }), change });
  }, [facts, locale, change]);

  const materials = useMemo(
    () => facts.materials.map(({ id, name }) => ({ value: id, label: name })),
    [facts.materials],
  );
  const taxes = useMemo(() => {
    const region = regionOfBill(facts, storeId, deliveredTo === "" ? null : deliveredTo);
    const now = (region?.components ?? []).filter(({ from, until }) => within(facts.today, from, until));
    return [...new Set(now.map(({ name }) => name))];
  }, [facts, storeId, deliveredTo]);
  const currency = facts.stores.find(({ id }) => id === storeId)?.currency ?? facts.homeCurrency;
  return (
    <div ref={box} className={style.fields} onInput={changed}>
      <input type="hidden" name="rows" value={rows} readOnly />
      <BillHead
        {...props}
        storeId={storeId}
        quote={quote}
        onKind={(kind) => setQuote(kind === "quote")}
        onStore={(chosen) => {
          setStore(chosen);
          changed();
        }}
        onRegion={(chosen) => {
          setDeliveredTo(chosen);
          changed();
        }}
      />
      <Rows title={words.lines} hint={words.linesHint}>
        {Array.from({ length: rows }, (_, row) => (
          <Line
            key={rowKey(row)}
            {...props}
            row={row}
            materials={materials}
            currency={currency}
            taxes={taxes}
            net={read.nets.get(row) ?? null}
            onChoice={changed}
          />
        ))}
      </Rows>
      {rows < MOST_ROWS ? <AddButton onAdd={() => setRows(rows + 1)}>{words.addLine}</AddButton> : null}
      <More title={words.fees}>
        <BillFees {...props} currency={currency} />
      </More>
      <More title={words.paying}>
        <BillMore {...props} quote={quote} />
      </More>
      <AmountField
        name="printedTotal"
        label={words.printedTotal}
        hint={words.printedTotalHint}
        beside={currency}
        locale={locale}
        words={props.amountWords}
      />
      <RunningTotals soFar={read.soFar} words={words} />
      <TotalSoFar soFar={read.soFar} words={words} />
    </div>
  );
}
