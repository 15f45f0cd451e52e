import { Decimal } from "../../../../lib/decimal.ts";
import type { Quantity } from "../../../../lib/measure/units.ts";
import { cutText } from "../../../../lib/show/cut-text.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { keyedLines } from "../../../../lib/takeoff/line-keys.ts";
import type { Takeoff } from "../../../../lib/takeoff/takeoff-entry.ts";
import { Below } from "../../../_ui/money-text.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { rowKey } from "../../../_ui/rows.tsx";
import { Table } from "../../../_ui/table.tsx";
import { DrawnView } from "./drawing.tsx";
import { formulaText, named } from "./named.ts";
import style from "./takeoff.module.css";
import type { TakeoffWords } from "./takeoff-words.ts";

type MeasuredProps = Readonly<{ takeoff: Takeoff; words: TakeoffWords; locale: string }>;

function amount({ value, unit }: Quantity, words: TakeoffWords, locale: string): string {
  return `${quantityText(value, locale)} ${words.units[unit]?.short ?? unit}`;
}

/** What it comes to, before waste; the drawing; and folded away, the steps on the way. */
export function Measured({ takeoff, words, locale }: MeasuredProps) {
  const { result, drawing, system } = takeoff;
  const lines = keyedLines(result.lines);
  return (
    <Part title={words.comesTo} note={words.comesToNote}>
      <Table
        caption={words.comesTo}
        captionHidden
        cards
        dense
        least="0"
        columns={[
          { key: "what", label: words.what },
          { key: "quantity", label: words.quantity, figures: true },
        ]}
        rows={lines.map((line) => ({
          key: line.key,
          cells: [
            <>
              {line.label ?? words.lines[line.name]}
              {line.cut === null ? null : (
                <Below>
                  {words.cut} {cutText(line.cut, system)}
                </Below>
              )}
            </>,
            amount(line.quantity, words, locale),
          ],
        }))}
      />
      {drawing.views.map((view, at) => (
        <DrawnView key={rowKey(at)} view={view} system={system} words={words} />
      ))}
      <details className={style.steps}>
        <summary>{words.steps}</summary>
        <Table
          caption={words.steps}
          captionHidden
          cards
          columns={[
            { key: "what", label: words.what },
            { key: "value", label: words.quantity, figures: true },
            { key: "formula", label: words.formula },
          ]}
          rows={[
            ...result.measures.map(({ name, value, formula }) => ({
              key: name,
              cells: [
                named(words, name),
                value instanceof Decimal ? quantityText(value, locale) : amount(value, words, locale),
                formulaText(words, formula),
              ],
            })),
            ...lines.map((line) => ({
              key: `line ${line.key}`,
              cells: [
                line.label ?? words.lines[line.name],
                amount(line.quantity, words, locale),
                formulaText(words, line.formula),
              ],
            })),
          ]}
        />
      </details>
    </Part>
  );
}
