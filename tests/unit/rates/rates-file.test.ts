import { describe, expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import type { Reading } from "../../../lib/files/reading.ts";
import { rateFates } from "../../../lib/rates/rate-fates.ts";
import type { RateRead } from "../../../lib/rates/rate-read.ts";
import { ratesFile } from "../../../lib/rates/rates-file.ts";
import {
  EURO_DAILY,
  EURO_HISTORY,
  H10_DAILY,
  H10_MONTHLY,
  VALET_CSV,
  VALET_JSON,
} from "../../fixtures/rate-files.ts";

const ALL = { currencies: null };
const TWO = { currencies: new Set(["EUR", "USD", "CAD"]) };

function said(one: Reading<RateRead>): string {
  if (one.fate === "skipped") return `${one.row} ${one.column}: ${one.why}`;
  if (one.fate === "refused") return `${one.row} ${one.column} "${one.text}": ${one.code}`;
  const { on, base, quote, rate } = one.value;
  return `${on} ${base}/${quote} ${rate}`;
}
const saidOf = (text: string, asked: Parameters<typeof ratesFile>[1]) =>
  ratesFile(text, asked).readings.map(said);

describe("a file of rates", () => {
  test("of the Bank of Canada is read as CSV", () => {
    expect(ratesFile(VALET_CSV, ALL)).toMatchObject({ shape: "valet-csv", source: "Bank of Canada" });
    expect(saidOf(VALET_CSV, ALL)).toEqual([
      "2017-01-03 EUR/CAD 1.3973",
      "2017-01-03 USD/CAD 1.3435",
      "2022-06-16 EUR/CAD 1.3594",
      "2022-06-16 USD/CAD 1.2928",
      "2022-06-17 EUR/CAD 1.3662",
      "2022-06-17 USD/CAD 1.3035",
    ]);
  });

  test("of the Bank of Canada is read as JSON, to the digit", () => {
    expect(ratesFile(VALET_JSON, ALL)).toMatchObject({ shape: "valet-json", source: "Bank of Canada" });
    expect(saidOf(VALET_JSON, { currencies: new Set(["USD", "CAD"]) })).toEqual([
      "2023-12-27 USD/CAD 1.3205",
      "1 FXEURCAD: not-asked-for",
      "2024-12-31 USD/CAD 1.4389",
      "2 FXEURCAD: not-asked-for",
    ]);
  });

  test("of the ECB is one euro in each currency, of a day or of many", () => {
    expect(ratesFile(EURO_DAILY, ALL)).toMatchObject({ shape: "euro", source: "European Central Bank" });
    expect(saidOf(EURO_DAILY, ALL)).toContain("2026-04-13 EUR/IDR 20082.05");
    expect(saidOf(EURO_HISTORY, TWO)).toEqual([
      "2026-04-13 EUR/USD 1.1684",
      "2 CYP: no-value",
      "2 EEK: no-value",
      "2026-04-13 EUR/CAD 1.6177",
      "2026-04-10 EUR/USD 1.1711",
      "3 CYP: no-value",
      "3 EEK: no-value",
      "2026-04-10 EUR/CAD 1.6187",
      "2001-01-02 EUR/USD 0.9423",
      "4 CYP: not-asked-for",
      "4 EEK: not-asked-for",
      "2001-01-02 EUR/CAD 1.4139",
    ]);
  });

  test("of the Federal Reserve by day is read; its holidays are no rates", () => {
    expect(ratesFile(H10_DAILY, ALL)).toMatchObject({ shape: "h10", source: "Federal Reserve H.10" });
    expect(saidOf(H10_DAILY, ALL)).toEqual([
      "2024-12-24 USD/CAD 1.438",
      "3 DEXCAUS: no-value",
      "4 DEXCAUS: no-value",
      "2024-12-27 USD/CAD 1.4417",
    ]);
  });

  test("of means of a month gives no rate of a day", () => {
    expect(saidOf(H10_MONTHLY, ALL)).toEqual(["2 EXCAUS: monthly-mean", "3 EXCAUS: monthly-mean"]);
  });

  test("of days and values is of the pair the person names, and refused while none is named", () => {
    const text = "date;rate\n31.12.2024;1,4389\n";
    expect(saidOf(text, ALL)).toEqual(['2 rate "1,4389": pair-not-said']);
    expect(saidOf(text, { ...ALL, pair: ["USD", "CAD"] })).toEqual(["2024-12-31 USD/CAD 1.4389"]);
  });

  test("refuses each figure that is none, by its row, column, text and reason", () => {
    const text = "date,value\n2024-01-02,1.33x\n2024-01-03,-1\nsoon,1.3\n2024-01-04,0\n2024-01-05,1.3,9\n";
    expect(saidOf(text, { ...ALL, pair: ["USD", "CAD"] })).toEqual([
      '2 value "1.33x": not-a-number',
      '3 value "-1": not-positive',
      '4 date "soon": not-a-day',
      '5 value "0": not-positive',
      '6  "9": too-many',
    ]);
  });

  test.each(["", "hello", "{", "[]", '{"observations": 3}', "a,b\n1,2"])("%j is no such file", (text) => {
    expect(ratesFile(text, ALL)).toMatchObject({ shape: "unknown", readings: [{ code: "unknown-shape" }] });
  });
});

test("a rate is new, there already, or against another of its day, pair and source; ahead of today it is refused", () => {
  const text =
    "date,value\n2024-01-02,1.33\n2024-01-03,1.34\n2024-01-04,1.35\n2024-01-04,1.36\n2024-01-09,1.4\n";
  const { readings } = ratesFile(text, { ...ALL, pair: ["USD", "CAD"] });
  const stored = [
    ["2024-01-02", "1.330", "mine"],
    ["2024-01-03", "1.3", "mine"],
    ["2024-01-04", "1.2", "another"],
  ].map(([on = "", rate = "", source = ""]) => ({
    on: localDate(on),
    base: "USD" as const,
    quote: "CAD" as const,
    rate: decimal(rate),
    source,
  }));
  const fates = rateFates(readings, stored, { source: "mine", today: "2024-01-08" });
  expect(fates.map(({ fate }) => fate)).toEqual(["same", "conflict", "new", "conflict", "refused"]);
});
