"use client";

import type { BillSoFar } from "../../lib/show/bill-so-far.ts";
import type { BillText } from "../../lib/show/bill-text.ts";
import type { BillWords } from "./bill-words.ts";
import style from "./bills.module.css";
import { fill } from "./fill.ts";

type Total = Readonly<{ key: string; label: string; amount: string; strong?: boolean }>;

function totalsOf(text: BillText, words: BillWords): Total[] {
  const named = (group: string, some: BillText["fees"]) =>
    some.map(({ key, name, amount }) => ({ key: `${group} ${key}`, label: name, amount }));
  const maybe = (key: string, label: string, amount: string | null) =>
    amount === null ? [] : [{ key, label, amount }];
  return [
    { key: "subtotal", label: words.subtotal, amount: text.subtotal },
    ...maybe("line fees", words.lineFees, text.lineFees),
    ...named("fee", text.fees),
    ...named("deposit", text.deposits),
    ...named("tax", text.taxes),
    { key: "total", label: words.total, amount: text.total, strong: true },
    ...maybe("due", words.due, text.due),
    ...(text.refundable === null && text.rebates === null
      ? []
      : [{ key: "cost", label: words.cost, amount: text.cost }]),
  ];
}

/** Whether it comes to the printed total, in words; else by how much it does not, and why. */
export function reconciledWords({ reconciled }: BillText, words: BillWords): string {
  if (reconciled.state === "no-printed-total") return words.noPrinted;
  if (reconciled.state === "reconciled") return fill(words.reconciled, { amount: reconciled.total });
  const roundings = reconciled.roundings.map((one) => words.roundings[one]).join("; ");
  const why = fill(words.why[reconciled.why], { roundings, ...reconciled.taxes });
  return `${fill(words.differs, { amount: reconciled.difference })} ${why}`;
}

/** The figures of a bill under one another, as on a receipt. */
export function BillTotals({ text, words }: Readonly<{ text: BillText; words: BillWords }>) {
  const tone = { "no-printed-total": style.open, reconciled: style.met, differs: style.missed };
  return (
    <section className={style.totals} aria-label={words.totals}>
      <dl>
        {totalsOf(text, words).map(({ key, label, amount, strong }) => (
          <div key={key} className={strong ? style.total : undefined}>
            <dt>{label}</dt>
            <dd>
              {amount}
              {strong ? ` ${text.currency}` : ""}
            </dd>
          </div>
        ))}
      </dl>
      <p role="status" className={tone[text.reconciled.state]}>
        {reconciledWords(text, words)}
      </p>
    </section>
  );
}

/** The total alone, kept in sight while lines are typed: it and whether it meets the printed one. */
export function TotalSoFar({ soFar, words }: Readonly<{ soFar: BillSoFar | null; words: BillWords }>) {
  if (soFar === null) return null;
  const { total, currency, reconciled } = soFar.text;
  const tone = { "no-printed-total": style.open, reconciled: style.met, differs: style.missed };
  const stands =
    reconciled.state === "no-printed-total"
      ? ""
      : reconciled.state === "reconciled"
        ? words.barMet
        : fill(words.barOff, { amount: reconciled.difference });
  // Said once already by the totals above it: kept from being read out twice at every letter.
  return (
    <p className={style.bar} aria-hidden="true">
      <span>
        {words.total} {total} {currency}
      </span>
      <span className={tone[reconciled.state]}>{stands}</span>
    </p>
  );
}

/** The same while it is typed: what can be read so far, or that nothing can. */
export function RunningTotals({ soFar, words }: Readonly<{ soFar: BillSoFar | null; words: BillWords }>) {
  if (soFar === null) return <p className={style.open}>{words.nothingYet}</p>;
  return (
    <>
      <BillTotals text={soFar.text} words={words} />
      {soFar.taxKnown ? null : <p className={style.missed}>{words.taxNotKnown}</p>}
    </>
  );
}
