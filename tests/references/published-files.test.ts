import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type LocalDate, localDate } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, roundHalfUp } from "../../lib/decimal.ts";
import { fileText } from "../../lib/files/file-text.ts";
import { indexFates } from "../../lib/indices/index-fates.ts";
import { indexFile } from "../../lib/indices/index-file.ts";
import { type IndexValue, valuesAsOf } from "../../lib/indices/index-value.ts";
import { ratesFile } from "../../lib/rates/rates-file.ts";

const FROZEN = new URL("./frozen/", import.meta.url);
const SHARED = new URL("../../../shared/data/", import.meta.url);
const bytes = (file: URL) => fileText(readFileSync(file));

/** A file of the shared data pack; null, with a line of output, where the pack is not beside this repository. */
function shared(name: string): string | null {
  const file = new URL(name, SHARED);
  if (existsSync(file)) return bytes(file);
  console.info(`not compared: ../shared/data/${name} is not here; the typed samples in tests/fixtures are`);
  return null;
}

// Bank of Canada, annual average exchange rates, CAD for 1 USD (FXAUSDCAD), as published: four decimals (read).
const ANNUAL = ["1.2986", "1.2957", "1.3269", "1.3415", "1.2535", "1.3013", "1.3497", "1.3698"];

function annualMeans(text: string): Map<string, Decimal> {
  const { readings } = ratesFile(text, { currencies: null, pair: ["USD", "CAD"] });
  const rates = readings.flatMap((one) => (one.fate === "accepted" ? [one.value] : []));
  expect(rates).toHaveLength(readings.length);
  const years = [...new Set(rates.map(({ on }) => on.slice(0, 4)))];
  return new Map(
    years.map((year) => {
      const own = rates.filter(({ on }) => on.startsWith(year));
      const total = own.reduce((sum, { rate }) => sum.plus(rate), decimal(0));
      return [year, roundHalfUp(total.dividedBy(own.length), 4)];
    }),
  );
}

test("the daily rates of the Bank of Canada, read from a file, have the means it published", () => {
  expect(
    annualMeans(bytes(new URL("boc-cad-per-usd-2024.csv", FROZEN)))
      .get("2024")
      ?.toFixed(),
  ).toBe(ANNUAL[7]);
  const all = shared("fx/boc_FXUSDCAD_daily_2017_2025.csv");
  if (all === null) return;
  const means = annualMeans(all);
  expect(ANNUAL.map((_, at) => means.get(String(2017 + at))?.toFixed())).toEqual(ANNUAL);
});

// Publishers' files as they are: every figure read or passed over, none refused; counts by looking at them.
test.each([
  ["formats/boc_valet.csv", "valet-csv"],
  ["formats/boc_valet.json", "valet-json"],
  ["formats/ecb_eurofxref.csv", "euro"],
  ["formats/ecb_eurofxref-hist.csv", "euro"],
])("%s is read whole", (name, shape) => {
  const text = shared(name);
  if (text === null) return expect(existsSync(SHARED)).toBe(false);
  const read = ratesFile(text, { currencies: new Set(["USD", "CAD", "EUR"]) });
  expect(read.shape).toBe(shape);
  expect(read.readings.filter(({ fate }) => fate === "refused")).toEqual([]);
  expect(read.readings.filter(({ fate }) => fate === "accepted").length).toBeGreaterThan(1);
});

test.each([
  ["formats/fred_new_header.csv", 14, "2025-09-01"],
  ["formats/fred_old_header.csv", 14, "2023-10-01"],
  ["formats/fred_quoted_header_R.csv", 14, "2023-11-01"],
  ["formats/fred_resaved_us_dates.csv", 14, "2025-12-01"],
  ["formats/bls_api_v2.json", 2, "2023-11-01"],
])("%s is read whole, to its last month", (name, count, last) => {
  const text = shared(name);
  if (text === null) return expect(existsSync(SHARED)).toBe(false);
  const { readings } = indexFile(text, { series: null });
  const values = readings.flatMap((one) => (one.fate === "accepted" ? [one.value] : []));
  expect(readings.filter(({ fate }) => fate === "refused")).toEqual([]);
  expect([
    values.length,
    values
      .map(({ month }) => month)
      .sort()
      .at(-1),
  ]).toEqual([count, last]);
});

describe("copies of one series of different age (BLS)", () => {
  // The days the copies were had; the first and last are later than any publication in them, as their last months show.
  const DAYS = ["2023-11-20", "2023-12-17", "2026-02-01"].map((one) => localDate(one));

  test.each(["WPU081", "WPU083", "WPU101", "WPUSI012011"])(
    "a figure of %s as of a day never uses a value published later",
    (series) => {
      const text = shared(`vintages/${series}_vintages.csv`);
      if (text === null) return expect(existsSync(SHARED)).toBe(false);
      const copies = indexFile(text, { series: null }).series;
      const days = DAYS.slice(-copies.length);
      const copy = (at: number) => indexFile(text, { series: copies[at] ?? "" }).readings;
      const stored = copies.reduce<IndexValue[]>((before, _, at) => {
        const publishedOn = days[at] as LocalDate;
        const added = indexFates(copy(at), before, publishedOn);
        return before.concat(
          added.flatMap(({ reading, fate }) =>
            reading.fate === "accepted" && (fate === "new" || fate === "revision")
              ? [{ ...reading.value, publishedOn }]
              : [],
          ),
        );
      }, []);
      for (const [at, day] of days.entries()) {
        const known = new Map(valuesAsOf(stored, day).map(({ month, value }) => [month, value.toFixed()]));
        for (const one of copy(at))
          if (one.fate === "accepted") expect(known.get(one.value.month)).toBe(one.value.value.toFixed());
      }
      expect(stored.length).toBeGreaterThan(copy(0).filter(({ fate }) => fate === "accepted").length);
    },
  );
});
