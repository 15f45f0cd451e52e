import type { CSSProperties, ReactNode } from "react";
import style from "./table.module.css";

export type Column = Readonly<{ key: string; label: ReactNode; figures?: boolean; quiet?: boolean }>;
export type Row = Readonly<{
  key: string;
  /** One per column, in order; the first heads the row. */
  cells: readonly ReactNode[];
  faint?: boolean;
}>;
export type TableProps = Readonly<{
  caption: ReactNode;
  /** The caption stands above in its own heading: keep it for screen readers only. */
  captionHidden?: boolean;
  columns: readonly Column[];
  rows: readonly Row[];
  foot?: readonly ReactNode[];
  /** Narrowest the table may get before it scrolls inside its box. */
  least?: string;
  /** On a phone each row becomes a small sheet of its own, every figure beside its name. */
  cards?: boolean;
  /** With `cards`: two cells side by side and no names, for lists whose figures speak for themselves. Cells past the fourth stay away. */
  dense?: boolean;
}>;

/** A box that scrolls takes the focus, so that the arrow keys can move it. */
const SCROLLS = { tabIndex: 0 };

/** A ruled table: figures at the end, tabular; on a phone it scrolls inside its own box, reachable by keyboard. */
export function Table({
  caption,
  captionHidden,
  columns,
  rows,
  foot,
  least = "32rem",
  cards,
  dense,
}: TableProps) {
  const named = (index: number) => {
    const column = columns[index];
    return cards && !column?.quiet && typeof column?.label === "string" ? column.label : undefined;
  };
  const side = (index: number) => (columns[index]?.figures ? style.figures : undefined);
  return (
    <section
      className={style.box}
      {...SCROLLS}
      aria-label={typeof caption === "string" ? caption : undefined}
    >
      <table
        className={`${style.table} ${cards ? style.cards : ""} ${dense ? style.dense : ""}`}
        style={{ "--least": least } as CSSProperties}
      >
        <caption className={captionHidden ? style.hidden : style.caption}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column, index) => (
              <th key={column.key} scope="col" className={side(index)}>
                {column.quiet ? <span className={style.hidden}>{column.label}</span> : column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key} className={row.faint ? style.faint : undefined}>
              {columns.map((column, index) =>
                index === 0 ? (
                  <th key={column.key} scope="row">
                    {row.cells[index]}
                  </th>
                ) : (
                  <td key={column.key} className={side(index)} data-name={named(index)}>
                    {cards ? <div>{row.cells[index]}</div> : row.cells[index]}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
        {foot ? (
          <tfoot>
            <tr>
              {columns.map((column, index) =>
                index === 0 ? (
                  <th key={column.key} scope="row">
                    {foot[index]}
                  </th>
                ) : (
                  <td key={column.key} className={side(index)} data-name={named(index)}>
                    {cards ? <div>{foot[index]}</div> : foot[index]}
                  </td>
                ),
              )}
            </tr>
          </tfoot>
        ) : null}
      </table>
    </section>
  );
}
