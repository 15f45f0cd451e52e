import { across, type Doc, INK, keepRoom, type Part, SIZE, setFace } from "./pdf-sheet.ts";
import { plainLetters } from "./plain-letters.ts";
import type { WordedCell, WordedTable } from "./worded.ts";

const PAD = 3;

type Column = Readonly<{ x: number; width: number; figures: boolean }>;

/** Columns of figures as wide as they need, the words share the rest. */
function columnsOf(doc: Doc, table: WordedTable): Column[] {
  const whole = across(doc);
  const figures = table.columns.filter((column) => column.figures).length;
  const words = table.columns.length - figures;
  const each = Math.min(figures > 6 ? 52 : 72, (whole * 0.75) / Math.max(figures, 1));
  const rest = (whole - each * figures) / Math.max(words, 1);
  let x = SIZE.margin;
  return table.columns.map((column) => {
    const width = column.figures ? each : rest;
    const placed = { x, width, figures: column.figures };
    x += width;
    return placed;
  });
}

type Line = Readonly<{ cells: readonly WordedCell[]; strong: boolean; head: boolean }>;

/** Draws one row of a table, on a new page (below its heads, anew) where it does not fit. */
function row(doc: Doc, table: Part, columns: readonly Column[], line: Line, heads: Line | null): void {
  const texts = line.cells.map(({ text, under = [] }) => ({
    text: plainLetters(text),
    under: under.map(plainLetters).join("\n"),
  }));
  const face = { size: SIZE.table, strong: line.strong, colour: line.head ? INK.muted : INK.ink };
  const optionsOf = ({ width, figures }: Column) =>
    ({ width: width - PAD, align: figures ? "right" : "left" }) as const;
  const heights = texts.map(({ text, under }, index) => {
    const column = columns[index];
    if (column === undefined) return 0;
    const above = setFace(doc, face).heightOfString(text, optionsOf(column));
    if (under === "") return above;
    return above + setFace(doc, { size: SIZE.small }).heightOfString(under, optionsOf(column));
  });
  const height = Math.max(...heights) + 2 * PAD;
  if (keepRoom(doc, height) && heads !== null) row(doc, table, columns, heads, null);
  const top = doc.y;
  const parts = texts.map(({ text, under }, index) => {
    const column = columns[index];
    return doc.struct(line.head || index === 0 ? "TH" : "TD", {}, () => {
      if (column === undefined) return;
      setFace(doc, face).text(text, column.x, top + PAD, optionsOf(column));
      if (under !== "")
        setFace(doc, { size: SIZE.small, colour: INK.muted }).text(under, column.x, doc.y, optionsOf(column));
    });
  });
  table.add(doc.struct("TR", {}, parts));
  doc.markContent("Artifact", { type: "Layout" });
  doc
    .lineWidth(line.head ? 1 : 0.5)
    .strokeColor(line.head ? INK.strong : INK.rule)
    .moveTo(SIZE.margin, top + height)
    .lineTo(SIZE.margin + across(doc), top + height)
    .stroke()
    .endMarkedContent();
  doc.y = top + height;
}

/** A table in real text, its heads repeated on every page it goes over. */
export function pdfTable({ doc, root }: Readonly<{ doc: Doc; root: Part }>, table: WordedTable): void {
  const part = doc.struct("Table");
  root.add(part);
  const columns = columnsOf(doc, table);
  const heads: Line = {
    cells: table.columns.map(({ label }) => ({ text: label })),
    strong: true,
    head: true,
  };
  row(doc, part, columns, heads, null);
  for (const { cells } of table.rows) row(doc, part, columns, { cells, strong: false, head: false }, heads);
  if (table.foot !== null) row(doc, part, columns, { cells: table.foot, strong: true, head: false }, heads);
  part.end();
  doc.y += 10;
}
