import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { placeCount } from "../../../lib/show/place-count.ts";
import { placeShares } from "../../../lib/show/place-shares.ts";
import { placeMoneyEntry } from "../../../lib/stock/stock-act-entry.ts";
import { SHEET } from "../../support/price-example.ts";
import { eventOf, lotOf } from "../../support/stock-example.ts";

const booked = [
  { lotId: "a", quantity: decimal(10) },
  { lotId: "b", quantity: decimal(4) },
  { lotId: "c", quantity: decimal(7) },
  { lotId: "d", quantity: decimal(1) },
];

test("a count says what is found, what is missing, what agrees and what was not counted", () => {
  const counted = new Map([
    ["a", "9"],
    ["b", "6.5"],
    ["c", "7"],
  ]);
  expect(placeCount(booked, counted, "en-CA")).toMatchObject({
    differences: [
      { lotId: "a", kind: "missing", difference: { exact: "1" } },
      { lotId: "b", kind: "found", difference: { exact: "2.5" } },
    ],
    agree: 1,
    uncounted: 1,
  });
});

test("a count of 0 is a count", () => {
  const { differences } = placeCount(booked, new Map([["d", "0"]]), "en-CA");
  expect(differences).toMatchObject([{ lotId: "d", kind: "missing", counted: { text: "0" } }]);
});

const stock = {
  lots: [lotOf(10, 200, { id: "a", placeId: "shed" }), lotOf(10, 200, { id: "b", placeId: "shed" })],
  events: [eventOf("drawn", 10, "2026-01-15", { lotId: "b" })],
  materials: new Map([["sheet", { ...SHEET, dimensions: {} }]]),
};
const asked = { amount: "90.00", currency: "CAD", from: "2026-01-05", until: "2026-01-24" };

test("a place's cost is shared by room and days, and the shares add up to it", () => {
  // a: 10 sheets over 20 days = 200; b: 10 over the 10 days before it was used up = 100; 90 x 2/3 and 1/3
  const entry = placeMoneyEntry.parse({ ...asked, shareBy: "count" });
  const { shares, unknown } = placeShares("shed", stock, entry, "en-CA");
  expect(unknown).toBeNull();
  expect(shares.map(({ lotId, amount, lastDay }) => [lotId, amount.replace("\u00a0", " "), lastDay])).toEqual(
    [
      ["a", "CAD 60.00", "2026-01-24"],
      ["b", "CAD 30.00", "2026-01-14"],
    ],
  );
});

test("a material of unknown size is named, and nothing is shared", () => {
  const entry = placeMoneyEntry.parse({ ...asked, shareBy: "weight" });
  expect(placeShares("shed", stock, entry, "en-CA")).toEqual({ shares: [], unknown: "sheet" });
});

test("where nothing lay nobody bears anything", () => {
  const entry = placeMoneyEntry.parse({ ...asked, shareBy: "count" });
  expect(placeShares("garage", stock, entry, "en-CA")).toEqual({ shares: [], unknown: null });
});
