import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { taxRegionEntry } from "../../../lib/tax/tax-region-entry.ts";

const SALES_TAX = { name: "Sales tax", ratePercent: "5.5", from: "2013-10-01", recoverable: false };

test("a region is complete from the first day of its first component and belongs to its code's country", () => {
  const parsed = taxRegionEntry.parse({ code: "US-ME", components: [SALES_TAX] });
  expect(parsed).toMatchObject({ code: "US-ME", name: "US-ME", country: "US", completeFrom: "2013-10-01" });
  expect(parsed.components[0]).toMatchObject({ base: "price", until: null, fromMemory: false });
});

test("a region without tax is complete from the first day that can be entered", () => {
  expect(taxRegionEntry.parse({ code: "US-NH", components: [] }).completeFrom).toBe("1990-01-01");
});

test("a code of the workspace's own has no country unless it is said", () => {
  expect(taxRegionEntry.parse({ code: "ISLAND", components: [] }).country).toBeNull();
  expect(taxRegionEntry.parse({ code: "ISLAND", country: "US", components: [] }).country).toBe("US");
});

test("every fault of every component is named", () => {
  const wrong = { name: "", ratePercent: "101", from: "2020-01-02", until: "2020-01-01" };
  const parsed = taxRegionEntry.safeParse({ components: [SALES_TAX, wrong] });
  expect(parsed.success ? [] : faultsOf(parsed.error)).toEqual([
    { path: "code", code: "missing" },
    { path: "components.1.name", code: "missing" },
    { path: "components.1.ratePercent", code: "percent-out-of-range" },
    { path: "components.1.until", code: "days-reversed" },
  ]);
});
