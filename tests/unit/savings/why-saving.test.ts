import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { carriedPayments } from "../../../lib/savings/carried-payments.ts";
import { rowKey } from "../../../lib/savings/row-key.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { whySaving } from "../../../lib/savings/why-saving.ts";
import { day, observation, TODAY } from "../../support/price-example.ts";
import { draw } from "../../support/saving-example.ts";
import { cad, factsOf, lotOf, needOf, revisionOf, SEVEN_PERCENT } from "../../support/stock-example.ts";

const before = observation("22.00", { seenOn: day("2025-12-01") });
const after = observation("26.00", { seenOn: day("2026-02-09") });
const facts = factsOf({
  requirements: [needOf("a", revisionOf(10))],
  lots: [lotOf(10, 200)],
  events: [draw],
  observations: [before, after],
  moneyRates: SEVEN_PERCENT,
});
const row = savings(null, null, TODAY, facts).rows[0];
const why = row === undefined ? null : whySaving(rowKey(row), TODAY, facts);

test("names both sightings of a going price drawn between two, and where on the line its day stands", () => {
  // 35 of 70 days: 22 + 4 x 35 / 70
  expect(why?.acquisition?.sources).toEqual([
    {
      value: decimal("24"),
      before: { observation: before, price: decimal("22.00") },
      after: { observation: after, price: decimal("26.00") },
    },
  ]);
});

test("names the one sighting of a fresh going price", () => {
  expect(why?.use?.sources.map((source) => [source.before.observation.id, source.after])).toEqual([
    [after.id, null],
  ]);
});

test("has the offers the strict figure is measured by, for the whole need", () => {
  expect(why?.cover?.takes.map(({ offer, quantity }) => [offer.observationId, quantity.toFixed()])).toEqual([
    [after.id, "10"],
  ]);
});

test("has no row for a key that names none", () => {
  expect(whySaving("lot~nothing", TODAY, facts)).toBe(null);
});

test("a payment is carried at each rate in force one after the other, amount x rate x days / 365", () => {
  const rates = [
    { percent: decimal(7), from: null },
    { percent: decimal("7.3"), from: day("2026-01-15") },
  ];
  const lines = carriedPayments([{ on: day("2026-01-05"), amount: cad(1000) }], rates, day("2026-02-04"));
  expect(
    lines?.map(({ days, percent, carrying }) => [days, percent.toFixed(), carrying.amount.toFixed(4)]),
  ).toEqual([
    [10, "7", "1.9178"],
    [20, "7.3", "4.0000"],
  ]);
});

test("a payment with no rate for some of its days is not carried at all", () => {
  const rates = [{ percent: decimal(7), from: day("2026-01-15") }];
  expect(carriedPayments([{ on: day("2026-01-05"), amount: cad(1000) }], rates, day("2026-02-04"))).toBe(
    null,
  );
});
