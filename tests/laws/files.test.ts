import * as fc from "fast-check";
import { expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import { fileText } from "../../lib/files/file-text.ts";
import type { Reading } from "../../lib/files/reading.ts";
import { indexFile } from "../../lib/indices/index-file.ts";
import { ratesFile } from "../../lib/rates/rates-file.ts";
import * as indexFiles from "../fixtures/index-files.ts";
import * as rateFiles from "../fixtures/rate-files.ts";
import { law } from "../support/law.ts";

const SAMPLES = [...Object.values(rateFiles), ...Object.values(indexFiles)].filter(
  (one) => typeof one === "string",
);
const readBoth = (text: string): readonly Reading<unknown>[][] => [
  [...ratesFile(text, { currencies: null, pair: ["USD", "CAD"] }).readings],
  [...indexFile(text, { series: null }).readings],
];
const FATES = new Set(["accepted", "skipped", "refused"]);

// A sample with bytes changed, taken out and put in comes nearer to a file than noise does.
const spoilt = fc
  .tuple(fc.constantFrom(...SAMPLES), fc.array(fc.tuple(fc.nat(2000), fc.nat(255)), { maxLength: 12 }))
  .map(([sample, changes]) => {
    const bytes = new Uint8Array(Buffer.from(sample));
    for (const [at, byte] of changes) if (bytes.length > 0) bytes[at % bytes.length] = byte;
    return bytes;
  });

test("no bytes make a reader throw, and each reading has one fate", () => {
  law(
    fc.property(fc.oneof(fc.uint8Array({ maxLength: 400 }), spoilt), (bytes) => {
      for (const readings of readBoth(fileText(bytes)))
        for (const one of readings) expect(FATES.has(one.fate)).toBe(true);
    }),
    { numRuns: 3000 },
  );
});

const cell = fc.oneof(
  fc.constantFrom(
    "",
    ".",
    "NA",
    "N/A",
    "1.3",
    "-1",
    "0",
    "1,5",
    "x",
    "1.3 CAD",
    "1e3",
    "=1+1",
    "NaN",
    "Infinity",
  ),
  fc.double({ noNaN: true }).map(String),
);
const dayCell = fc.oneof(
  fc
    .date({ min: new Date("1900-01-01"), max: new Date("2030-01-01"), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10)),
  fc.constantFrom("", "soon", "2024-13-01", "3/4/2025", "2024-05"),
);
const DAY = /^\d{4}-\d{2}(-\d{2})?$/;

test("every row of dirt is accounted for: the figures of a row whose day is read, one refusal for any other", () => {
  law(
    fc.property(fc.array(fc.tuple(dayCell, cell, cell), { minLength: 1, maxLength: 30 }), (rows) => {
      const lines = rows.map((cells) => cells.map((one) => (one.includes(",") ? `"${one}"` : one)).join(","));
      const blank = rows.map((cells) => cells.every((one) => one === ""));
      for (const readings of readBoth(["date,ONE,TWO", ...lines, ""].join("\n"))) {
        const count = (fate: string) => readings.filter((one) => one.fate === fate).length;
        expect(count("accepted") + count("skipped") + count("refused")).toBe(readings.length);
        const found = [...new Set(readings.map(({ row }) => row))];
        expect(found).toEqual(rows.flatMap((_, at) => (blank[at] ? [] : [at + 2])));
        for (const row of found) expect([1, 2]).toContain(readings.filter((one) => one.row === row).length);
      }
    }),
    { numRuns: 500 },
  );
});

test("a number is made only of text that is exactly it", () => {
  law(
    fc.property(fc.array(fc.tuple(dayCell, cell), { minLength: 1, maxLength: 20 }), (rows) => {
      const text = ["date,ONE", ...rows.map(([day, one]) => `${day},"${one}"`)].join("\n");
      for (const one of ratesFile(text, { currencies: null, pair: ["USD", "CAD"] }).readings) {
        if (one.fate !== "accepted") continue;
        expect(one.text).toMatch(/^\d+(\.\d+)?$/);
        expect(one.value.rate.equals(decimal(one.text))).toBe(true);
        expect(rows[one.row - 2]?.[0]).toMatch(DAY);
      }
    }),
    { numRuns: 1000 },
  );
});
