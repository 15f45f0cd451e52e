import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { exchangeRateEntry } from "../../../lib/rates/exchange-rate-entry.ts";

const RATE = { date: "2026-03-13", base: "USD", quote: "CAD", rate: "1.3712", source: "central bank" };

function codes(given: Record<string, unknown>): string[] {
  const parsed = exchangeRateEntry.safeParse({ ...RATE, ...given });
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("a published rate says its day, both currencies, the rate and who published it", () => {
  const parsed = exchangeRateEntry.parse(RATE);
  expect(parsed).toMatchObject({ on: "2026-03-13", base: "USD", quote: "CAD", source: "central bank" });
  expect(parsed.rate.toString()).toBe("1.3712");
});

test("a rate may have twelve places, not thirteen, and is never zero or a JSON number", () => {
  expect(codes({ rate: "0.729288214702" })).toEqual([]);
  expect(codes({ rate: "0.7292882147023" })).toEqual(["rate too-many-places"]);
  expect(codes({ rate: "0" })).toEqual(["rate not-positive"]);
  expect(codes({ rate: 1.37 })).toEqual(["rate not-text"]);
});

test("a currency has no rate to itself, and small letters name no currency", () => {
  expect(codes({ quote: "USD" })).toEqual(["quote same-currency"]);
  expect(codes({ quote: "cad" })).toEqual(["quote unknown-currency"]);
});
