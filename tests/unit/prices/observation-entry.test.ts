import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import {
  corrected,
  type ObservationCorrection,
  observationCorrection,
  observationEntry,
} from "../../../lib/prices/observation-entry.ts";

const SEEN = {
  materialId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0001",
  storeId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0002",
  seenOn: "2026-03-14",
  terms: "shelf",
  amount: "41.98",
  currency: "CAD",
  per: { quantity: "1", unit: "sheet" },
  taxIncluded: false,
};

function codes(change: Record<string, unknown>): string[] {
  const parsed = observationEntry.safeParse({ ...SEEN, ...change });
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("a shelf price is read with every field of an observation but its id", () => {
  const parsed = observationEntry.parse(SEEN);
  expect(parsed.amount?.amount.toString()).toBe("41.98");
  expect(parsed.amount?.currency).toBe("CAD");
  expect(parsed.per.quantity.toString()).toBe("1");
  expect(parsed).toMatchObject({ taxRegion: null, minQuantity: null, until: null, fees: [], note: null });
});

test.each([
  [41.98, "not-text"],
  ["1.2.3", "not-a-number"],
  ["1,049", "not-a-number"],
  ["-5", "not-positive"],
  ["0", "not-positive"],
  ["0.00", "not-positive"],
  [1e30, "not-text"],
  ["1e30", "not-a-number"],
  ["1000000000.01", "too-large"],
  ["1.0000001", "too-many-places"],
  ["1".repeat(41), "too-long"],
  ["", "not-a-number"],
  [" 5", "not-a-number"],
  ["NaN", "not-a-number"],
  ["Infinity", "not-a-number"],
])("an amount of %j is refused as %s", (amount, code) => {
  expect(codes({ amount })).toEqual([`amount ${code}`]);
});

test.each([
  ["2026-02-29", "not-a-day"],
  ["14/03/2026", "not-a-day"],
  ["1989-12-31", "day-too-early"],
  ["1900-01-01", "day-too-early"],
  [20260314, "not-text"],
])("a day of %j is refused as %s", (seenOn, code) => {
  expect(codes({ seenOn })).toEqual([`seenOn ${code}`]);
});

test("every fault is named, none hidden by the first", () => {
  expect(
    codes({
      amount: "1.2.3",
      currency: "XXX",
      per: { quantity: "0", unit: "furlong" },
      terms: "quote",
      minQuantity: "9",
      maxQuantity: "3",
      from: "2026-04-02",
      fees: [{ name: "Delivery", basis: "order", taxable: "yes" }],
      colour: "red",
    }).sort(),
  ).toEqual(
    [
      "amount not-a-number",
      "currency unknown-currency",
      "per.quantity not-positive",
      "per.unit unknown-unit",
      "fees.0.taxable not-yes-or-no",
      "fees.0.amount missing",
      "colour unknown-field",
      "minQuantity minimum-above-maximum",
      "until until-required",
    ].sort(),
  );
});

test("an empty entry names every field that must be given", () => {
  const parsed = observationEntry.safeParse({});
  const faults = parsed.success ? [] : faultsOf(parsed.error);
  expect(faults.map((fault) => `${fault.path} ${fault.code}`)).toEqual([
    "materialId missing",
    "storeId missing",
    "seenOn missing",
    "terms missing",
  ]);
});

test("a priced sighting needs amount, currency, what it buys and whether tax is in it", () => {
  expect(codes({ amount: undefined, currency: undefined, per: undefined, taxIncluded: undefined })).toEqual([
    "amount missing",
    "currency missing",
    "per missing",
    "taxIncluded missing",
  ]);
});

test("none left has no amount", () => {
  expect(codes({ terms: "none-left" })).toEqual(["amount amount-not-expected"]);
  const bare = {
    materialId: SEEN.materialId,
    storeId: SEEN.storeId,
    seenOn: SEEN.seenOn,
    terms: "none-left",
  };
  expect(observationEntry.parse(bare).amount).toBeNull();
});

test("a quote needs its last day, a quantity break its minimum", () => {
  expect(codes({ terms: "quote" })).toEqual(["until until-required"]);
  expect(codes({ terms: "quantity-break" })).toEqual(["minQuantity missing"]);
  expect(codes({ terms: "quote", until: "2026-03-20" })).toEqual([]);
});

test("a first day after the last is refused", () => {
  expect(codes({ from: "2026-04-02", until: "2026-04-01" })).toEqual(["until days-reversed"]);
  expect(codes({ from: "2026-04-01", until: "2026-04-01" })).toEqual([]);
});

test("a fee is an amount or a percent, not both and not neither", () => {
  const fee = { name: "Eco", basis: "unit", taxable: true };
  expect(codes({ fees: [fee] })).toEqual(["fees.0.amount missing"]);
  expect(codes({ fees: [{ ...fee, amount: "1", percent: "2" }] })).toEqual([
    "fees.0.amount amount-not-expected",
  ]);
  expect(codes({ fees: [{ ...fee, percent: "101" }] })).toEqual(["fees.0.percent percent-out-of-range"]);
});

test("text limits: a note of 2,001 characters, a NUL and half a surrogate pair are refused", () => {
  expect(codes({ note: "n".repeat(2001) })).toEqual(["note too-long"]);
  expect(codes({ note: "a\u0000b" })).toEqual(["note not-text"]);
  expect(codes({ note: "a\ud800b" })).toEqual(["note not-text"]);
  expect(codes({ note: "n".repeat(2000) })).toEqual([]);
});

test("something that is no entry at all is one fault", () => {
  for (const given of [[], "text", 5, null]) {
    const parsed = observationEntry.safeParse(given);
    expect(parsed.success ? [] : faultsOf(parsed.error)).toEqual([{ path: "", code: "not-an-object" }]);
  }
});

const STORED = { id: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0003", ...observationEntry.parse(SEEN) };

function correction(given: Record<string, unknown>): ObservationCorrection {
  return observationCorrection.parse({ reason: "misread the tag", ...given });
}

test("a correction changes only what it names and keeps the currency seen", () => {
  const after = corrected(STORED, correction({ amount: "43.98" }));
  expect(after.ok && after.value.amount?.amount.toString()).toBe("43.98");
  expect(after.ok && after.value.amount?.currency).toBe("CAD");
  expect(after.ok && after.value.seenOn).toBe("2026-03-14");
});

test("a correction to a quote without a last day is refused by the same rule as a new one", () => {
  const after = corrected(STORED, correction({ terms: "quote" }));
  expect(after).toEqual({ ok: false, faults: [{ path: "until", code: "until-required" }] });
});

test("a correction to none left must take the amount away", () => {
  expect(corrected(STORED, correction({ terms: "none-left" })).ok).toBe(false);
  expect(corrected(STORED, correction({ terms: "none-left", amount: null })).ok).toBe(true);
});

test("a correction needs a reason and cannot move a sighting to another store or material", () => {
  const parsed = observationCorrection.safeParse({ storeId: SEEN.storeId, materialId: SEEN.materialId });
  expect(parsed.success ? [] : faultsOf(parsed.error)).toEqual([
    { path: "reason", code: "missing" },
    { path: "storeId", code: "unknown-field" },
    { path: "materialId", code: "unknown-field" },
  ]);
});
