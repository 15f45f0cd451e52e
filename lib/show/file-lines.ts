import type { FaultCode } from "../fault.ts";
import type { Reading, SkipReason } from "../files/reading.ts";
import type { IndexFated } from "../indices/index-fates.ts";
import type { RateFated } from "../rates/rate-fates.ts";

export type LineFate = RateFated["fate"] | IndexFated["fate"];

/** What becomes of one figure of a file, for reading. against: the stored figure it differs from. */
export type FileLine = Readonly<{
  key: string;
  row: number;
  column: string;
  text: string;
  fate: LineFate;
  skipped: SkipReason | null;
  refused: FaultCode | null;
  against: string | null;
}>;

/** All of a file's figures: how many came to what, and the lines worth looking at first. */
export type FileLines = Readonly<{
  counts: Readonly<Record<LineFate, number>>;
  shown: readonly FileLine[];
  left: number;
}>;

const ORDER: readonly LineFate[] = ["refused", "conflict", "revision", "new", "same", "skipped"];

function lineOf(
  { row, column, text, ...reading }: Reading<unknown>,
  fate: LineFate,
  against: string | null,
  place: number,
): FileLine {
  return {
    key: String(place),
    row,
    column,
    text,
    fate,
    skipped: reading.fate === "skipped" ? reading.why : null,
    refused: reading.fate === "refused" ? reading.code : null,
    against,
  };
}

function linesOf(lines: readonly FileLine[], most: number): FileLines {
  const count = (fate: LineFate) => lines.filter((line) => line.fate === fate).length;
  const shown = ORDER.flatMap((fate) => lines.filter((line) => line.fate === fate)).slice(0, most);
  return {
    counts: {
      new: count("new"),
      revision: count("revision"),
      same: count("same"),
      conflict: count("conflict"),
      skipped: count("skipped"),
      refused: count("refused"),
    },
    shown,
    left: lines.length - shown.length,
  };
}

/** The figures of a file of rates: what is refused or contradicts first, at most `most` of them. */
export function rateLines(fates: readonly RateFated[], most: number): FileLines {
  const lines = fates.map(({ reading, fate, known }, place) =>
    lineOf(reading, fate, known?.toFixed() ?? null, place),
  );
  return linesOf(lines, most);
}

/** The figures of a file of index values: what is refused or contradicts first, at most `most` of them. */
export function indexLines(fates: readonly IndexFated[], most: number): FileLines {
  const against = ({ fate, known }: IndexFated) =>
    fate === "revision" || fate === "conflict" ? (known?.value.toFixed() ?? null) : null;
  const lines = fates.map((one, place) => lineOf(one.reading, one.fate, against(one), place));
  return linesOf(lines, most);
}
