import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { lotsOnDay, lotText, stockText } from "../../../lib/show/lot-text.ts";
import type { Lot, StockEvent } from "../../../lib/stock/lot.ts";
import { day, observation, TODAY } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, paid, revisionOf } from "../../support/stock-example.ts";

const forA = { requirementId: "a" };

function stock(lots: readonly Lot[], events: readonly StockEvent[] = []) {
  const facts = factsOf({
    lots,
    events,
    requirements: [needOf("a", revisionOf(10))],
    observations: [observation("26.00", { seenOn: day("2026-02-20") })],
  });
  const onDay = lotsOnDay(TODAY, facts);
  const { rows } = savings(null, TODAY, TODAY, facts);
  return { onDay, texts: onDay.map((lot) => lotText(lot, TODAY, rows, "en-CA")) };
}

test("a lot says what is set aside, what is free, and what is there at cost", () => {
  const { texts } = stock([lotOf(10, 200)], [eventOf("allocated", 6, "2026-01-06", forA)]);
  // 10 for 200.00: 20.00 each; 10 are there
  expect(texts[0]).toMatchObject({
    onHand: { text: "10" },
    setAside: { text: "6" },
    free: { text: "4" },
    cost: "200.00",
    each: "20.00",
    ageDays: 56,
  });
});

test("what has left a lot is not in its cost on hand", () => {
  const { texts } = stock([lotOf(3, 10)], [eventOf("drawn", 1, "2026-01-06", forA)]);
  // 10.00 x 1 / 3 = 3.33 has left; 6.67 stays
  expect(texts[0]).toMatchObject({ onHand: { text: "2", exact: "2" }, cost: "6.67" });
});

test("a lot with nothing left says nothing is there, not zero of it", () => {
  const { texts } = stock([lotOf(2, 10)], [eventOf("drawn", 2, "2026-01-06", forA)]);
  expect([texts[0]?.onHand, texts[0]?.free]).toEqual([null, null]);
});

test("a cost that cannot be said names the reason and is never zero", () => {
  const { texts, onDay } = stock([lotOf(2, 10, { storeId: null })]);
  expect([texts[0]?.cost, texts[0]?.each, texts[0]?.noCost]).toEqual([null, null, "region-unknown"]);
  expect(stockText(onDay, "CAD", "en-CA")).toEqual({ lots: 1, cost: "0.00", free: "0.00", unknown: 1 });
});

test("only what is set aside saves or loses", () => {
  const { texts } = stock([lotOf(10, 200)], [eventOf("allocated", 6, "2026-01-06", forA)]);
  // 6 x 26.00 - 6 x 20.00
  expect(texts[0]?.saving).toEqual({ side: "saved", figure: "+36.00", size: "36.00" });
  const free = stock([lotOf(10, 200)]);
  expect([free.texts[0]?.saving, free.texts[0]?.savingUnknown]).toEqual([null, false]);
});

test("without a going price the saving of what is set aside is not known", () => {
  const facts = factsOf({
    lots: [lotOf(10, 200)],
    events: [eventOf("allocated", 6, "2026-01-06", forA)],
    requirements: [needOf("a", revisionOf(10))],
  });
  const [lot] = lotsOnDay(TODAY, facts);
  if (lot === undefined) throw new Error("the lot is missing");
  const text = lotText(lot, TODAY, savings(null, TODAY, TODAY, facts).rows, "en-CA");
  expect([text.saving, text.savingUnknown]).toEqual([null, true]);
});

test("stock in all counts lots with something there, at cost, and the free part of it", () => {
  const { onDay } = stock(
    [lotOf(10, 200), lotOf(4, 50, { id: "other" }), lotOf(1, 5, { id: "gone" })],
    [
      eventOf("allocated", 6, "2026-01-06", forA),
      eventOf("drawn", 1, "2026-01-06", { ...forA, lotId: "gone" }),
    ],
  );
  // 200.00 + 50.00; free: 4 x 20.00 + 50.00
  expect(stockText(onDay, "CAD", "en-CA")).toEqual({ lots: 2, cost: "250.00", free: "130.00", unknown: 0 });
});

test("the lot ordered last comes first, and one not ordered yet is not there", () => {
  const { texts } = stock([
    lotOf(1, 5, { id: "old" }),
    lotOf(1, 5, { id: "new", orderedOn: day("2026-02-01") }),
    lotOf(1, 5, { id: "later", orderedOn: day("2026-03-03") }),
  ]);
  expect(texts.map((text) => text.lotId)).toEqual(["new", "old"]);
});

test("what is ordered and not received is said to be on order", () => {
  const lot = lotOf(5, 50, { receipts: [{ quantity: decimal(2), on: day("2026-01-10") }], paid: paid(50) });
  expect(stock([lot]).texts[0]).toMatchObject({ onHand: { text: "5" }, onOrder: "3" });
});

test("what was saved on the used part of a lot is not counted again for what is still set aside", () => {
  const { texts } = stock(
    [lotOf(10, 200)],
    [eventOf("allocated", 6, "2026-01-06", forA), eventOf("drawn", 2, "2026-02-25", forA)],
  );
  // 4 x (26.00 - 20.00)
  expect(texts[0]?.saving?.figure).toBe("+24.00");
});
