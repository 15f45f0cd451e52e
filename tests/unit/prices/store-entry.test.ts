import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { storeEntry, storePatch } from "../../../lib/prices/store-entry.ts";

const YARD = { name: "Mill Road Yard", taxRegion: "CA-NS", currency: "CAD" };

function codes(schema: typeof storeEntry | typeof storePatch, given: Record<string, unknown>): string[] {
  const parsed = schema.safeParse(given);
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("a store needs a name, a tax region and a currency, and its import charges are not confirmed", () => {
  expect(storeEntry.parse(YARD)).toEqual({
    ...YARD,
    returnDays: null,
    priceAdjustmentDays: null,
    restockingPercent: null,
    leadDays: null,
    tripCost: null,
    pricesIncludeTax: false,
    distanceKm: null,
    discounts: [],
    importCharges: null,
  });
  expect(codes(storeEntry, {})).toEqual(["name missing", "taxRegion missing", "currency missing"]);
});

test("a trip cost without a currency is in the store's own", () => {
  expect(storeEntry.parse({ ...YARD, currency: "USD", tripCost: "12.50" }).tripCost?.currency).toBe("USD");
  const given = { ...YARD, currency: "USD", tripCost: { amount: "12.50", currency: "CAD" } };
  expect(storeEntry.parse(given).tripCost?.currency).toBe("CAD");
});

test("a change of trip cost alone must name its currency", () => {
  expect(codes(storePatch, { tripCost: "12.50" })).toEqual(["tripCost.currency missing"]);
  expect(storePatch.parse({ tripCost: "12.50", currency: "CAD" }).tripCost?.amount.toString()).toBe("12.5");
  expect(storePatch.parse({ tripCost: null })).toEqual({ tripCost: null });
});

test("a change names only what changes", () => {
  expect(storePatch.parse({ name: " Kestrel Hill Supply " })).toEqual({ name: "Kestrel Hill Supply" });
  expect(storePatch.parse({})).toEqual({});
});

test("a name of 201 characters or of blanks is refused, a region's capitals are forgiven", () => {
  expect(codes(storeEntry, { ...YARD, name: "n".repeat(201) })).toEqual(["name too-long"]);
  expect(codes(storeEntry, { ...YARD, name: "   " })).toEqual(["name missing"]);
  expect(storeEntry.parse({ ...YARD, taxRegion: "ca-ns" }).taxRegion).toBe("CA-NS");
  expect(codes(storeEntry, { ...YARD, taxRegion: "Nova Scotia" })).toEqual(["taxRegion unknown-region"]);
});

test("import charges may be confirmed as none", () => {
  expect(storeEntry.parse({ ...YARD, importCharges: [] }).importCharges).toEqual([]);
  const duty = { name: "Duty", percent: "3.5", from: "2026-02-02", until: "2026-02-01" };
  expect(codes(storeEntry, { ...YARD, importCharges: [duty] })).toEqual([
    "importCharges.0.until days-reversed",
  ]);
});
