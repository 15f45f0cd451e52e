import { expect, test } from "vitest";
import { localDate, plusDays } from "../../../lib/calendar/local-date.ts";
import { CANADA } from "../../../lib/tax/regions-ca.ts";
import { taxOn } from "../../../lib/tax/tax.ts";

function taxIn(province: string, day: string): string {
  const region = CANADA.find(({ code }) => code === `CA-${province}`);
  if (region === undefined) throw new Error(`no ${province}`);
  const tax = taxOn(region, localDate(day));
  return tax.known
    ? tax.components.map(({ name, ratePercent }) => `${name} ${ratePercent}`).join(" + ")
    : "not known";
}

test("the ten provinces and three territories are all there", () => {
  expect(
    CANADA.map(({ code }) => code.slice(3))
      .sort()
      .join(" "),
  ).toBe("AB BC MB NB NL NS NT NU ON PE QC SK YT");
});

test("Nova Scotia's rate changed on the first of April 2025", () => {
  expect(taxIn("NS", "2025-03-31")).toBe("HST 15");
  expect(taxIn("NS", "2025-04-01")).toBe("HST 14");
});

test("British Columbia went to one tax and back to two", () => {
  expect(taxIn("BC", "2010-06-30")).toBe("not known");
  expect(taxIn("BC", "2010-07-01")).toBe("HST 12");
  expect(taxIn("BC", "2013-04-01")).toBe("GST 5 + PST 7");
});

test.each([
  ["MB", "2013-07-01"],
  ["SK", "2006-10-28"],
  ["QC", "1998-01-01"],
  ["ON", "2010-07-01"],
  ["PE", "2013-04-01"],
  ["NB", "1997-04-01"],
  ["NL", "1997-04-01"],
  ["NS", "1997-04-01"],
])("the tax of %s is not known before its provincial part is listed, from %s it is", (province, first) => {
  expect(taxIn(province, plusDays(localDate(first), -1))).toBe("not known");
  expect(taxIn(province, first)).not.toBe("not known");
});

test("from the day it is complete a region is never without tax, and one tax never counts twice", () => {
  for (const { code, completeFrom, components } of CANADA) {
    const turns = components.flatMap(({ from, until }) =>
      until === null ? [from] : [from, until, plusDays(until, 1)],
    );
    for (const day of [completeFrom, ...turns].filter((turn) => turn >= completeFrom)) {
      const names = taxIn(code.slice(3), day)
        .split(" + ")
        .map((part) => part.split(" ")[0]);
      expect(names[0]).not.toBe("");
      expect(new Set(names).size).toBe(names.length);
      expect(names.includes("GST") && names.includes("HST")).toBe(false);
    }
  }
});

test("GST, HST and QST come back to a registered buyer, PST and RST do not", () => {
  const recoverable = new Map(
    CANADA.flatMap((region) => region.components.map((one) => [one.name, one.recoverable])),
  );
  expect(Object.fromEntries(recoverable)).toEqual({
    GST: true,
    HST: true,
    QST: true,
    PST: false,
    RST: false,
  });
});

test("a row set down from memory, rate or date, is marked so", () => {
  const rows = CANADA.flatMap(({ code, components }) => components.map((one) => ({ code, ...one })));
  for (const row of rows) expect(row.fromMemory).toBe(row.evidence.includes("from memory"));
  const current = rows
    .filter((row) => row.until === null && row.fromMemory)
    .map((row) => `${row.code} ${row.name}`);
  expect(current).toEqual(["CA-MB RST", "CA-NB HST", "CA-NL HST", "CA-PE HST"]);
});

test("the QST was on the price and the GST until 2012", () => {
  const quebec = CANADA.find(({ code }) => code === "CA-QC");
  const bases = quebec?.components
    .filter(({ name }) => name === "QST")
    .map(({ ratePercent, base }) => `${ratePercent} ${base}`);
  expect(bases).toEqual([
    "7.5 price-plus-other-tax",
    "8.5 price-plus-other-tax",
    "9.5 price-plus-other-tax",
    "9.975 price",
  ]);
});
