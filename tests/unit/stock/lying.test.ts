import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOfEvent, faultsOfUndo } from "../../../lib/stock/ledger.ts";
import type { StockEvent } from "../../../lib/stock/lot.ts";
import { lyingIn, lyingOn } from "../../../lib/stock/lying.ts";
import { day, TODAY } from "../../support/price-example.ts";
import { eventOf, lotOf } from "../../support/stock-example.ts";

const inShed = lotOf(10, 200, { placeId: "shed" });
const onSite = lotOf(10, 200);

function lying(events: readonly StockEvent[], lot = inShed, on = "2026-03-01"): string[] {
  return lyingOn(lot, events, day(on)).map(({ placeId, quantity }) => `${placeId ?? "-"} ${quantity}`);
}
const move = (quantity: number, on: string, placeId: string | null, fromPlaceId: string | null = null) =>
  eventOf("moved", quantity, on, { placeId, fromPlaceId });

test("what comes in lies where the lot was put, part by part on its day", () => {
  const late = lotOf(10, 200, {
    placeId: "shed",
    receipts: [
      { quantity: decimal(4), on: day("2026-01-10") },
      { quantity: decimal(6), on: day("2026-01-20"), placeId: "loft" },
    ],
  });
  expect(lying([], late, "2026-01-09")).toEqual([]);
  expect(lying([], late, "2026-01-10")).toEqual(["shed 4"]);
  expect(lying([], late, "2026-01-20")).toEqual(["shed 4", "loft 6"]);
});

test("a move changes where, never how much", () => {
  const moved = [move(3, "2026-01-06", "loft"), move(1, "2026-01-07", null, "loft")];
  expect(lying(moved)).toEqual(["shed 7", "loft 2", "- 1"]);
});

test("what leaves without a place is taken from what is not put away first, then from where it was put first", () => {
  const put = [move(4, "2026-01-06", "loft"), move(3, "2026-01-07", null, "shed")];
  const drawn = (quantity: number) => lying([...put, eventOf("drawn", quantity, "2026-01-08")]);
  expect(drawn(2)).toEqual(["shed 3", "loft 4", "- 1"]);
  expect(drawn(5)).toEqual(["shed 1", "loft 4"]);
  expect(drawn(7)).toEqual(["loft 3"]);
});

test("what leaves is taken from the place it names", () => {
  const moved = move(4, "2026-01-06", "loft");
  expect(lying([moved, eventOf("sold", 3, "2026-01-07", { placeId: "loft" })])).toEqual(["shed 6", "loft 1"]);
});

test("what is found lies where it was found, else with the rest, else where the lot was put", () => {
  expect(lying([eventOf("found", 1, "2026-01-06", { placeId: "loft" })])).toEqual(["shed 10", "loft 1"]);
  const all = move(10, "2026-01-06", "loft");
  expect(lying([all, eventOf("found", 1, "2026-01-07")])).toEqual(["loft 11"]);
  const some = move(4, "2026-01-06", "loft");
  expect(lying([some, eventOf("found", 1, "2026-01-07")])).toEqual(["shed 7", "loft 4"]);
  const gone = eventOf("drawn", 10, "2026-01-06");
  expect(lying([gone, eventOf("found", 1, "2026-01-07")])).toEqual(["shed 1"]);
});

test("allocating and storage money move nothing", () => {
  const events = [
    eventOf("allocated", 4, "2026-01-06", { requirementId: "a" }),
    eventOf("stored", 0, "2026-01-07", { placeId: "loft" }),
  ];
  expect(lying(events)).toEqual(["shed 10"]);
  expect(lyingIn(inShed, events, day("2026-01-07"), "loft").toFixed()).toBe("0");
});

test("an event that takes more from a place than lies there is refused, or stands in the way of an undo", () => {
  const taken = eventOf("drawn", 1, "2026-01-07", { placeId: "loft" });
  expect(faultsOfEvent(onSite, [], taken, TODAY)).toEqual([
    { path: "quantity", code: "more-than-in-place", values: { has: "0" } },
  ]);
  const moved = move(1, "2026-01-06", "loft");
  expect(faultsOfEvent(onSite, [moved], taken, TODAY)).toEqual([]);
  expect(faultsOfUndo(onSite, [moved, taken], moved.id)).toMatchObject([
    { code: "event-in-the-way", values: { event: taken.id } },
  ]);
  const early = move(1, "2026-01-05", null, "loft");
  expect(faultsOfEvent(onSite, [moved, taken], early, TODAY)[0]?.code).toBe("more-than-in-place");
});
