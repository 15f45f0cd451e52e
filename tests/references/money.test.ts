import { describe, expect, test } from "vitest";
import { decimal, roundHalfUp, roundUpToStep } from "../../lib/decimal.ts";
import { cashTotal } from "../../lib/money/cash-rounding.ts";
import { type CurrencyCode, MINOR_UNITS } from "../../lib/money/currencies.ts";
import { add, money, roundToMinorUnit, times } from "../../lib/money/money.ts";
import { tablesOf } from "../support/shared-data.ts";

// Budget 2012 (Canada), "Rounding", and the Royal Canadian Mint's rounding page: x.x1 and x.x2 down to x.x0, x.x3 and
// x.x4 up to x.x5, x.x6 and x.x7 down to x.x5, x.x8 and x.x9 up to the next x.x0 (read); the worked totals derived.
describe("a cash total in Canada", () => {
  test.each([
    ["4.92", "4.9"],
    ["4.93", "4.95"],
    ["4.97", "4.95"],
    ["4.98", "5"],
    ["19.98", "20"],
    ["0.02", "0"],
    ["248.62", "248.6"],
  ])("of %s is paid as %s", (total, paid) => {
    expect(cashTotal(money(total, "CAD")).amount.toString()).toBe(paid);
  });

  test("follows the printed table in every last digit", () => {
    const paid = Array.from({ length: 10 }, (_, digit) =>
      cashTotal(money(`1.1${digit}`, "CAD")).amount.toFixed(2),
    );
    expect(paid.join(" ")).toBe("1.10 1.10 1.10 1.15 1.15 1.15 1.15 1.15 1.20 1.20");
  });
});

describe("minor units", () => {
  // ISO 4217 by a public value-set listing and a money library's table (read); HUF from memory.
  test.each<[CurrencyCode, number]>([
    ["JPY", 0],
    ["KRW", 0],
    ["CLP", 0],
    ["CAD", 2],
    ["USD", 2],
    ["EUR", 2],
    ["BHD", 3],
    ["KWD", 3],
    ["OMR", 3],
    ["JOD", 3],
    ["TND", 3],
    ["LYD", 3],
    ["CLF", 4],
    ["UYW", 4],
    ["IQD", 3],
    ["IDR", 2],
    ["HUF", 2],
  ])("%s has %d", (currency, places) => {
    expect(MINOR_UNITS[currency]).toBe(places);
  });

  // Measured on Node 20.20.2: the runtime's formatting gives these three no decimals. So the table, never Intl.
  test.each<CurrencyCode>(["IQD", "IDR", "HUF"])(
    "of %s are not what the runtime's formatting says",
    (currency) => {
      const format = new Intl.NumberFormat("en", { style: "currency", currency });
      expect(format.resolvedOptions().maximumFractionDigits).not.toBe(MINOR_UNITS[currency]);
    },
  );

  // The listing itself, frozen in tests/references/frozen/iso-4217-minor-units.csv (read).
  test("agree with the whole ISO 4217 table", () => {
    for (const rows of tablesOf("iso-4217-minor-units.csv", "units/iso4217_minor_units.csv")) {
      const table = rows.flatMap(({ code, minor_unit: unit }) =>
        unit === "-" ? [] : [[code, Number(unit)]],
      );
      expect(table.length).toBe(165);
      expect(Object.fromEntries(table)).toEqual(MINOR_UNITS);
    }
  });
});

describe("unit prices", () => {
  // Price Marking Order (Northern Ireland) 2004, article 13: to the nearest 0.1 p, five up (rule read); derived.
  // NIST Handbook 130, Uniform Unit Pricing Regulation: cents, or tenths of a cent under a dollar (from memory).
  test.each([
    ["44.65", 1, "44.7"],
    ["44.64", 1, "44.6"],
    ["1.3281", 2, "1.33"],
    ["0.4467", 3, "0.447"],
  ])("%s to %d decimals is %s", (price, places, rounded) => {
    expect(roundHalfUp(decimal(price), places).toString()).toBe(rounded);
  });

  // Derived: three for 20.00 is 6.6667 each for reading, and 253.33 for thirty-eight.
  test("three for 20.00 is 6.6667 each, and not rounded before it multiplies", () => {
    const each = times(money(20, "CAD"), decimal(1).dividedBy(3));
    expect(roundHalfUp(each.amount, 4).toString()).toBe("6.6667");
    expect(roundToMinorUnit(times(each, 38)).amount.toString()).toBe("253.33");
  });

  // Derived: ten percent off, then tax on what is left.
  test("250.00 less ten percent with 13 % tax is 254.25", () => {
    const reduced = times(money(250, "CAD"), "0.9");
    expect(add(reduced, times(reduced, "0.13")).amount.toString()).toBe("254.25");
  });

  // Derived: stock is netted before rounding up to the pack.
  test("95 needed, 12 at hand, packs of ten: 90 are bought, not 100", () => {
    expect(roundUpToStep(decimal(95).minus(12), decimal(10)).toString()).toBe("90");
  });
});
