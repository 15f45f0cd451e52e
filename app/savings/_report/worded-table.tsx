import Link from "next/link";
import type { ReactNode } from "react";
import { Below } from "../../_ui/money-text.tsx";
import { Table } from "../../_ui/table.tsx";
import type { WordedTable as Worded, WordedCell } from "./worded.ts";

function cellOf({ text, under = [] }: WordedCell, href: string | null): ReactNode {
  return (
    <>
      {href === null ? text : <Link href={href}>{text}</Link>}
      {under.map((line) => (
        <Below key={line}>{line}</Below>
      ))}
    </>
  );
}

type TableProps = Readonly<{
  table: Worded;
  least?: string;
  /** Where the reason of a row stands, with `:row` for its key; null: nowhere. */
  whyPath?: string | null;
}>;

/** A table of a report on a page: on a phone every row is a sheet of its own. */
export function WordedTable({ table, least = "40rem", whyPath = null }: TableProps) {
  return (
    <Table
      caption={table.title}
      captionHidden
      cards
      least={least}
      columns={table.columns}
      rows={table.rows.map(({ key, cells, faint = false, why }) => ({
        key,
        faint,
        cells: cells.map((cell, index) =>
          cellOf(
            cell,
            index === 0 && why !== undefined && whyPath
              ? whyPath.replace(":row", encodeURIComponent(why))
              : null,
          ),
        ),
      }))}
      {...(table.foot === null ? {} : { foot: table.foot.map((cell) => cellOf(cell, null)) })}
    />
  );
}
