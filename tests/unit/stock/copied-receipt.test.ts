import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { copiedReceipt } from "../../../lib/stock/copied-receipt.ts";
import { day, observation, store } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";

const SHEET = someMaterial("sheet", { faceWidth: "4 ft", faceLength: "8 ft" });
const BOARD = someMaterial("piece", { nominalThickness: "2 in", nominalWidth: "6 in", length: "12 ft" });
const AT = store("yard");
const ON = day("2026-03-01");
const of = (quantity: string) => ({ quantity: decimal(quantity), orderedOn: ON });
const seen = (amount: string | null, given: Partial<Observation> = {}) =>
  observation(amount, { storeId: AT.id, materialId: SHEET.id, ...given });

test("three for 20.00: thirty-eight cost 253.33, rounded once", () => {
  const price = seen("20.00", { per: { quantity: decimal(3), unit: "sheet" } });
  expect(copiedReceipt(price, SHEET, AT, of("38"))?.amount.toFixed()).toBe("253.33");
});

test("a price per thousand board feet is paid by the piece", () => {
  // A 2x6 of 12 ft is 12 board feet; 10 of them at 900.00 per thousand: 108.00, by hand.
  const price = seen("900.00", { per: { quantity: decimal(1), unit: "mbf" } });
  expect(copiedReceipt(price, BOARD, AT, of("10"))?.amount.toFixed()).toBe("108");
});

test("the standing discount of the day is off, but not off what a receipt says", () => {
  const discounts = [{ category: null, percent: decimal(3), from: day("2026-01-01"), until: null }];
  const at = store("yard", { discounts });
  const amount = (terms: Observation["terms"]) =>
    copiedReceipt(seen("40.00", { terms }), SHEET, at, of("10"))?.amount.toFixed();
  expect(amount("shelf")).toBe("388");
  expect(amount("paid")).toBe("400");
});

test("tax, region and fees are copied; a fee per thousand becomes a fee per piece", () => {
  const fee = { name: "Levy", percent: null, freeFrom: null, taxable: true };
  const price = seen("900.00", {
    per: { quantity: decimal(1), unit: "mbf" },
    taxIncluded: true,
    taxRegion: "CA-XX",
    exemptFrom: ["PST"],
    fees: [
      { ...fee, amount: decimal("5.00"), basis: "unit" },
      { ...fee, amount: decimal("60.00"), basis: "order" },
    ],
  });
  const paid = copiedReceipt(price, BOARD, AT, of("10"));
  expect(paid).toMatchObject({ currency: "CAD", taxIncluded: true, taxRegion: "CA-XX", exemptFrom: ["PST"] });
  // 5.00 per thousand board feet is 0.06 for a piece of 12.
  expect(paid?.fees.map(({ amount }) => amount?.toFixed())).toEqual(["0.06", "60"]);
});

test("what has no price, or one in a unit that cannot be read, is not copied", () => {
  expect(copiedReceipt(seen(null), SHEET, AT, of("1"))).toBeNull();
  const byWeight = seen("1", { per: { quantity: decimal(1), unit: "pound" } });
  expect(copiedReceipt(byWeight, SHEET, AT, of("1"))).toBeNull();
});
