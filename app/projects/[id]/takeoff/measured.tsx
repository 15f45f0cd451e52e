import { Decimal } from "../../../../lib/decimal.ts";
import type { Quantity } from "../../../../lib/measure/units.ts";
import { cutText } from "../../../../lib/show/cut-text.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { keyedLines } from "../../../../lib/takeoff/line-keys.ts";
import type { Takeoff } from "../../../../lib/takeoff/takeoff-entry.ts";
import { Part } from "../../../_ui/page-head.tsx";
import { rowKey } from "../../../_ui/rows.tsx";
import { Table } from "../../../_ui/table.tsx";
import { DrawnView } from "./drawing.tsx";
import { formulaText, named } from "./named.ts";
import type { TakeoffWords } from "./takeoff-words.ts";

type MeasuredProps = Readonly<{ takeoff: Takeoff; words: TakeoffWords; locale: string }>;

function amount({ value, unit }: Quantity, words: TakeoffWords, locale: string): string {
  return `${quantityText(value, locale)} ${words.units[unit]?.short ?? unit}`;
}

/** The drawing, the steps on the way and what it comes to, before waste. */
export function Measured({ takeoff, words, locale }: MeasuredProps) {
  const { result, drawing, system } = takeoff;
  return (
    <Part title={words.comesTo} note={words.comesToNote}>
      {drawing.views.map((view, at) => (
        <DrawnView key={rowKey(at)} view={view} system={system} words={words} />
      ))}
      <Table
        caption={words.comesTo}
        captionHidden
        cards
        columns={[
          { key: "what", label: words.what },
          { key: "quantity", label: words.quantity, figures: true },
          { key: "cut", label: words.cut, figures: true },
          { key: "formula", label: words.formula },
        ]}
        rows={keyedLines(result.lines).map((line) => ({
          key: line.key,
          cells: [
            line.label ?? words.lines[line.name],
            amount(line.quantity, words, locale),
            line.cut === null ? "" : cutText(line.cut, system),
            formulaText(words, line.formula),
          ],
        }))}
      />
      <Table
        caption={words.steps}
        cards
        columns={[
          { key: "what", label: words.what },
          { key: "value", label: words.quantity, figures: true },
          { key: "formula", label: words.formula },
        ]}
        rows={result.measures.map(({ name, value, formula }) => ({
          key: name,
          cells: [
            named(words, name),
            value instanceof Decimal ? quantityText(value, locale) : amount(value, words, locale),
            formulaText(words, formula),
          ],
        }))}
      />
    </Part>
  );
}
