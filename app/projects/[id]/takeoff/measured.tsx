import { Decimal } from "../../../../lib/decimal.ts";
import { isCounted, type Quantity } from "../../../../lib/measure/units.ts";
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
  const forms = words.units[unit];
  const word = isCounted(unit) ? (value.equals(1) ? forms?.one : forms?.many) : forms?.short;
  return `${quantityText(value, locale)} ${word ?? unit}`;
}

/** So many views are seen at once; the others are folded away, a house has many walls. */
const SHOWN = 2;

/** What it comes to, before waste; the drawing; and folded away, the steps on the way. */
export function Measured({ takeoff, words, locale }: MeasuredProps) {
  const { result, drawing, system } = takeoff;
  const lines = keyedLines(result.lines);
  const drawn = drawing.views.map((view, at) => (
    <DrawnView key={rowKey(at)} view={view} system={system} words={words} />
  ));
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
              <span className={style.what}>{line.label ?? words.lines[line.name]}</span>
              {line.cut === null ? null : (
                <Below>
                  {words.cut} {cutText(line.cut, system)}
                </Below>
              )}
            </>,
            <span key="quantity" className={style.quantity}>
              {amount(line.quantity, words, locale)}
            </span>,
          ],
        }))}
      />
      {drawn.slice(0, SHOWN)}
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
        {drawn.slice(SHOWN)}
      </details>
    </Part>
  );
}
