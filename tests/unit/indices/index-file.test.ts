import { describe, expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import type { Reading } from "../../../lib/files/reading.ts";
import { indexFates } from "../../../lib/indices/index-fates.ts";
import { indexFile } from "../../../lib/indices/index-file.ts";
import type { IndexRead } from "../../../lib/indices/index-read.ts";
import { type IndexValue, valuesAsOf } from "../../../lib/indices/index-value.ts";
import {
  copyAsCsv,
  FRED_NEW,
  FRED_OLD,
  FRED_QUOTED,
  FRED_RESAVED,
  LABOUR_BUREAU,
  STATISTICS_CANADA,
} from "../../fixtures/index-files.ts";

const ANY = { series: null };
function said(one: Reading<IndexRead>): string {
  if (one.fate === "skipped") return `${one.row} ${one.column}: ${one.why}`;
  if (one.fate === "refused") return `${one.row} ${one.column} "${one.text}": ${one.code}`;
  const { series, month, value, preliminary } = one.value;
  return `${series} ${month} ${value}${preliminary ? " preliminary" : ""}`;
}
const saidOf = (text: string, asked: Parameters<typeof indexFile>[1] = ANY) =>
  indexFile(text, asked).readings.map(said);

describe("a file of an index", () => {
  test.each([
    [FRED_NEW, "WPU081 1926-01-01 8.3", "WPU081 2024-11-01 263.493"],
    [FRED_OLD, "WPU081 1926-01-01 8.3", "WPU081 2023-10-01 248.015"],
    [FRED_QUOTED, "WPU1392 1947-01-01 28.3", "WPU1392 2023-11-01 266.138"],
    [FRED_RESAVED, "WPU083 1947-01-01 47.9", "WPU083 2025-12-01 269.6"],
  ])("is read in FRED's shapes, %#", (text, first, last) => {
    const read = saidOf(text);
    expect([read.at(0), read.at(-1)]).toEqual([first, last]);
    expect(read).toHaveLength(3);
  });

  test("leaves a hole a hole", () => {
    expect(saidOf(FRED_QUOTED)[1]).toBe("3 WPU1392: no-value");
  });

  test("of the Bureau of Labor Statistics keeps preliminary and passes the annual mean over", () => {
    expect(saidOf(LABOUR_BUREAU)).toEqual([
      "WPU081 2023-11-01 240.273 preliminary",
      "WPU081 2023-06-01 257.664",
      "3 WPU081: annual",
    ]);
  });

  test("of Statistics Canada has a series per vector, of which one is taken", () => {
    const { series } = indexFile(STATISTICS_CANADA, ANY);
    expect(series).toEqual(["v1230995983"]);
    expect(saidOf(STATISTICS_CANADA, { series: "v1230995983" })).toEqual([
      "v1230995983 2025-08-01 118.4",
      "v1230995983 2025-09-01 117.2 preliminary",
      "4 VALUE: not-asked-for",
    ]);
    const inThousands = STATISTICS_CANADA.replace("units", "thousands");
    expect(saidOf(inThousands)[0]).toBe('2 SCALAR_FACTOR "thousands": unknown-unit');
  });

  test("refuses what no index can be: nothing below zero, no day within a month, no word", () => {
    expect(saidOf("date,oil\n2020-04-01,-36.98\n2020-04-20,30\n2020-05-01,thirty\n2020-06-01,30\n")).toEqual([
      '2 oil "-36.98": not-positive',
      '3 oil "30": not-a-month',
      '4 oil "thirty": not-a-number',
      "oil 2020-06-01 30",
    ]);
  });

  test.each(["", "{", '{"Results":{}}', "a,b\n1,2"])("%j is no such file", (text) => {
    expect(indexFile(text, ANY)).toMatchObject({ shape: "unknown", readings: [{ code: "unknown-shape" }] });
  });
});

describe("copies of one index published at three times", () => {
  const on = {
    first: localDate("2023-11-20"),
    second: localDate("2023-12-17"),
    third: localDate("2025-11-01"),
  };
  const added = (stored: readonly IndexValue[], copy: keyof typeof on) =>
    indexFates(indexFile(copyAsCsv(copy), ANY).readings, stored, on[copy]);
  const kept = (stored: readonly IndexValue[], copy: keyof typeof on): IndexValue[] => [
    ...stored,
    ...added(stored, copy).flatMap(({ reading, fate }) =>
      reading.fate === "accepted" && (fate === "new" || fate === "revision")
        ? [{ ...reading.value, publishedOn: on[copy] }]
        : [],
    ),
  ];
  const all = kept(kept(kept([], "first"), "second"), "third");
  const july = (day: string) =>
    valuesAsOf(all, localDate(day))
      .find(({ month }) => month === "2023-07-01")
      ?.value.toFixed();

  test("a value is what had been published by the day, never what came later", () => {
    expect(july("2023-11-19")).toBeUndefined();
    expect(july("2023-11-20")).toBe("263.497");
    expect(july("2023-12-16")).toBe("263.497");
    expect(july("2023-12-17")).toBe("272.345");
    expect(july("2026-01-01")).toBe("272.345");
  });

  test("each adds only what differs from what was known", () => {
    expect(added(kept([], "first"), "second").map(({ fate }) => fate)).toEqual([
      "same",
      "revision",
      "revision",
      "revision",
      "revision",
      "new",
    ]);
    expect(all.filter(({ publishedOn }) => publishedOn === on.third)).toHaveLength(2);
    expect(kept(all, "third")).toHaveLength(all.length);
  });

  test("in another order of taking in the answers are the same", () => {
    const backwards = kept(kept(kept([], "third"), "second"), "first");
    for (const day of Object.values(on))
      expect(valuesAsOf(backwards, day).map(({ value }) => value.toFixed())).toEqual(
        valuesAsOf(all, day).map(({ value }) => value.toFixed()),
      );
  });

  test("two values published on one day contradict each other", () => {
    const other = [
      {
        month: localDate("2023-07-01"),
        publishedOn: on.first,
        value: decimal(1),
        preliminary: null,
      },
    ];
    expect(added(other, "first").map(({ fate }) => fate)).toContain("conflict");
  });
});

test("a value that is final now says something new, one that says nothing of it does not", () => {
  const month = localDate("2023-11-01");
  const stored = [
    { month, publishedOn: localDate("2023-12-17"), value: decimal("240.273"), preliminary: true },
  ];
  const again = (preliminary: boolean | null) =>
    indexFates(
      [
        {
          row: 1,
          column: "",
          text: "",
          fate: "accepted",
          value: { series: "WPU081", month, value: decimal("240.273"), preliminary },
        },
      ],
      stored,
      localDate("2024-05-01"),
    )[0]?.fate;
  expect([again(true), again(null), again(false)]).toEqual(["same", "same", "revision"]);
});
