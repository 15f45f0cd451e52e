import type { getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { SavingsDrawing } from "../../../lib/show/savings-drawing.ts";
import type { UnitWords } from "../../_words/unit-words.ts";

/** What a report is worded with. */
export type ReportWords = Readonly<{
  t: Awaited<ReturnType<typeof getTranslations<"savingsReport">>>;
  s: Awaited<ReturnType<typeof getTranslations<"savings">>>;
  units: UnitWords;
  locale: string;
}>;

/** What a cell is worth beside its text, for a spreadsheet: exact digits, or a day. */
export type CellValue =
  | Readonly<{ kind: "number"; digits: string; places: number }>
  | Readonly<{ kind: "day"; day: LocalDate }>;
/** under: smaller lines below. */
export type WordedCell = Readonly<{ text: string; under?: readonly string[]; value?: CellValue }>;
/** why: what its reason stands under. */
export type WordedRow = Readonly<{
  key: string;
  cells: readonly WordedCell[];
  faint?: boolean;
  why?: string;
}>;
export type WordedTable = Readonly<{
  key: string;
  title: string;
  note: string | null;
  columns: readonly Readonly<{ key: string; label: string; figures: boolean }>[];
  rows: readonly WordedRow[];
  foot: readonly WordedCell[] | null;
}>;

/** A sentence with its figures set apart: even places are plain, odd ones stand out. */
export type Sentence = readonly string[];

/** A whole report in words, the same for a page, for paper and for every file. */
export type WordedReport = Readonly<{
  title: string;
  about: readonly string[];
  headline: readonly Sentence[];
  key: readonly Readonly<{ key: string; label: string; value: WordedCell; note: string | null }>[];
  picture: Readonly<{ title: string; note: string; text: string; legend: readonly LegendLine[] }>;
  drawings: Readonly<{ wide: SavingsDrawing; narrow: SavingsDrawing }> | null;
  time: WordedTable;
  breakdown: WordedTable;
  views: readonly WordedTable[];
  rows: WordedTable;
  sources: WordedTable;
  books: WordedTable | null;
  firm: readonly string[];
  definitions: readonly Readonly<{ term: string; text: string }>[];
  closing: readonly string[];
}>;
export type LegendLine = Readonly<{
  series: "saved" | "lost" | "net" | "held";
  label: string;
  figure: string | null;
}>;
