import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { currenciesSeen } from "../../../lib/show/currencies-seen.ts";
import { changeText, materialRow, materialRows } from "../../../lib/show/material-rows.ts";
import { measuresOfOne, sizeRows } from "../../../lib/show/measures-of-one.ts";
import { daysAgo, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";

const row = (...seen: Parameters<typeof materialRow>[2]) =>
  materialRow(TODAY, SHEET, seen, valuation(), "en-CA");

test("a material shows its last price, its age, and how it moved since that store was seen before", () => {
  expect(
    row(observation("40", { seenOn: daysAgo(30) }), observation("42", { seenOn: daysAgo(6) })).last,
  ).toMatchObject({
    price: "42.00",
    storeName: "near",
    ageDays: 6,
    stale: false,
    change: { direction: "up", percent: "5%" },
  });
});

test("a price older than its recheck days is stale, on the day itself it is not", () => {
  expect(row(observation("40", { seenOn: daysAgo(30) })).last?.stale).toBe(false);
  expect(row(observation("40", { seenOn: daysAgo(31) })).last?.stale).toBe(true);
});

test("a material without a price says so instead of 0", () => {
  expect(row().last).toBeNull();
});

test("one price alone has no change and no line", () => {
  expect(row(observation("40")).last).toMatchObject({ change: null, spark: null });
});

test("the small line follows one store only, so that it moves when its price does", () => {
  const seen = [
    observation("40", { seenOn: daysAgo(20) }),
    observation("90", { seenOn: daysAgo(10), storeId: "far" }),
    observation("40", { seenOn: daysAgo(1) }),
  ];
  // Level: both of near's prices are 40, in the middle of a box 28 high.
  expect(row(...seen).last?.spark?.path).toBe("M3.0 14.0L93.0 14.0");
});

test("rows take their own material's prices only", () => {
  const other = { ...SHEET, id: "other" };
  const rows = materialRows(TODAY, [SHEET, other], [observation("40")], valuation(), "en-CA");
  expect(rows.map(({ last }) => last?.price ?? null)).toEqual(["40.00", null]);
});

test("a change is a direction and a size without a sign", () => {
  expect(changeText({ percent: decimal("-8.65") }, "en-CA")).toEqual({ direction: "down", percent: "8.7%" });
  expect(changeText({ percent: decimal("0") }, "en-CA")).toEqual({ direction: "level", percent: "0%" });
});

test("a sheet of 4 by 8 feet is 32 square feet and 0.032 thousand of them", () => {
  expect(measuresOfOne(SHEET, "en-CA")).toMatchObject([
    { unit: "square-foot", text: "32" },
    { unit: "square-metre", text: "2.973" },
    { unit: "msf", text: "0.032" },
  ]);
});

test("its sizes stand in the order of a form", () => {
  expect(sizeRows(SHEET, "en-CA").map(({ name, text }) => `${name} ${text}`)).toEqual([
    "faceWidth 4",
    "faceLength 8",
  ]);
});

test("prices can be looked at in the home currency first, then in those of tags, stores and rates", () => {
  const given = valuation({ stores: [store("across", { currency: "USD" })] });
  const seen = [observation("10", { currency: "EUR" })];
  expect(currenciesSeen({ observations: seen, valuation: given })).toEqual(["CAD", "EUR", "USD"]);
});
