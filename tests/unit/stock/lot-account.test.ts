import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Lot, StockEvent } from "../../../lib/stock/lot.ts";
import { lotAccount } from "../../../lib/stock/lot-account.ts";
import { LotDisagrees } from "../../../lib/stock/lot-state.ts";
import { day, TODAY } from "../../support/price-example.ts";
import { cad, eventOf, lotOf } from "../../support/stock-example.ts";

const a = { requirementId: "a" };
const b = { requirementId: "b" };
const three = lotOf(3, 100);

function account(events: readonly StockEvent[], lot: Lot = three, on = TODAY) {
  const { withdrawals, holdings } = lotAccount(lot, cad("100.00"), events, on);
  return {
    gone: withdrawals.map(({ event, cost }) => `${event.kind} ${cost.amount.toFixed(2)}`),
    held: holdings.map(
      (one) => `${one.requirementId ?? "free"} ${one.quantity} ${one.cost.amount.toFixed(2)}`,
    ),
  };
}

describe("a lot's account", () => {
  test("shares the cost over what left and what is there, to the cent", () => {
    const events = [eventOf("allocated", 1, "2026-01-06", a), eventOf("drawn", 1, "2026-01-07")];
    expect(account(events)).toEqual({ gone: ["drawn 33.33"], held: ["a 1 33.34", "free 1 33.33"] });
  });

  test("charges withdrawals in the order they happened, whatever the order they are listed in", () => {
    const sale = eventOf("sold", 1, "2026-01-09", { amount: cad(40) });
    const draw = eventOf("drawn", 1, "2026-01-07", a);
    expect(account([sale, draw]).gone).toEqual(["drawn 33.33", "sold 33.34"]);
  });

  test("lists allocations by when they were made", () => {
    const events = [eventOf("allocated", 1, "2026-01-06", b), eventOf("allocated", 1, "2026-01-07", a)];
    expect(account(events).held.map((row) => row[0])).toEqual(["b", "a", "f"]);
  });

  test("has no row for what a release gave back", () => {
    const events = [eventOf("allocated", 2, "2026-01-06", a), eventOf("released", 2, "2026-01-07", a)];
    expect(account(events)).toEqual({ gone: [], held: ["free 3 100.00"] });
  });

  test("charges what was found with nothing", () => {
    const events = [eventOf("found", 1, "2026-01-06"), eventOf("drawn", 4, "2026-01-07", a)];
    const [row] = lotAccount(three, cad(100), events, TODAY).withdrawals;
    expect([row?.cost.amount.toFixed(2), row?.charged.toNumber()]).toEqual(["100.00", 3]);
  });

  test("leaves the cost of what is missing with the missing", () => {
    expect(account([eventOf("missing", 3, "2026-01-06")])).toEqual({ gone: ["missing 100.00"], held: [] });
  });

  test("of events that contradict each other is refused", () => {
    expect(() => account([eventOf("drawn", 4, "2026-01-07")])).toThrow(LotDisagrees);
  });
});

describe("what is on order", () => {
  const half = lotOf(10, 100, {
    receipts: [
      { quantity: decimal(4), on: day("2026-01-20") },
      { quantity: decimal(6), on: day("2026-04-01") },
    ],
  });
  const events = [eventOf("allocated", 3, "2026-01-06", a), eventOf("allocated", 5, "2026-01-07", b)];
  const onOrder = (on: string) =>
    lotAccount(half, cad(100), events, day(on)).holdings.map((one) => one.onOrder.toNumber());

  test("is everything before the first receipt", () => {
    expect(onOrder("2026-01-19")).toEqual([3, 5, 2]);
  });

  test("is what the first receipt does not reach, the first allocation served first", () => {
    expect(onOrder("2026-01-20")).toEqual([0, 4, 2]);
  });

  test("is nothing once all has come in", () => {
    expect(onOrder("2026-04-01")).toEqual([0, 0, 0]);
  });
});
