import writeXlsxFile, { type Cell, type Row, type Sheet } from "write-excel-file/node";
import type { FlatRows } from "./flat-rows.ts";
import type { ReportWords, WordedCell, WordedReport, WordedTable } from "./worded.ts";

const DATE = "yyyy-mm-dd";
const WIDE = 34;
const FIGURES = 15;

function format(places: number): string {
  return places === 0 ? "#,##0" : `#,##0.${"0".repeat(places)}`;
}

/** Numbers as numbers and days as days; all else is text. */
function cell({ text, value }: WordedCell): Cell {
  if (value === undefined) return text === "" ? null : { value: text, type: String, wrap: true };
  if (value.kind === "day") return { value: new Date(`${value.day}T00:00:00Z`), type: Date, format: DATE };
  return { value: Number(value.digits), type: Number, format: format(value.places) };
}

const head = (text: string): Cell => ({ value: text, type: String, fontWeight: "bold", wrap: true });
const line = (text: string): Row => [{ value: text, type: String }];

function tableRows(table: WordedTable): Row[] {
  const foot = table.foot?.map((one) => {
    const made = cell(one);
    return typeof made === "object" && made !== null && "type" in made
      ? ({ ...made, fontWeight: "bold" } satisfies Cell)
      : made;
  });
  return [
    table.columns.map(({ label }) => head(label)),
    ...table.rows.map(({ cells }) => cells.map(cell)),
    ...(foot === undefined ? [] : [foot]),
  ];
}

const widths = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ width: index === 0 ? WIDE : FIGURES }));

function summary(report: WordedReport, { t }: ReportWords): Row[] {
  return [
    [head(report.title)],
    ...report.about.map(line),
    ...report.headline.map((sentence) => line(sentence.join(""))),
    [null],
    [head(t("summaryWhat")), head(t("summaryFigure"))],
    ...report.key.map(({ label, value }): Row => [{ value: label, type: String }, cell(value)]),
    [null],
    ...report.firm.map(line),
    [null],
    ...report.definitions.map(({ term, text }): Row => [head(term), { value: text, type: String }]),
    [null],
    ...report.closing.map(line),
  ];
}

/** A report as a spreadsheet of several sheets. */
export function xlsxFile(report: WordedReport, flat: FlatRows, words: ReportWords): Promise<Buffer> {
  const { t } = words;
  const sheet = (name: string, data: Row[], columns: number): Sheet<Buffer> => ({
    sheet: name,
    data,
    columns: widths(columns),
  });
  return writeXlsxFile([
    sheet(t("sheets.summary"), summary(report, words), 2),
    sheet(t("sheets.breakdown"), tableRows(report.breakdown), 5),
    sheet(
      t("sheets.views"),
      report.views.flatMap((view) => [...tableRows(view), [null]]),
      7,
    ),
    {
      ...sheet(
        t("sheets.rows"),
        [flat.columns.map(({ label }) => head(label)), ...flat.rows.map((row) => row.map(cell))],
        flat.columns.length,
      ),
      stickyRowsCount: 1,
    },
    ...(report.books === null ? [] : [sheet(t("sheets.books"), tableRows(report.books), 9)]),
    sheet(t("sheets.sources"), tableRows(report.sources), 5),
  ]).toBuffer();
}
