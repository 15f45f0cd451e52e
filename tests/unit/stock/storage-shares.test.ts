import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOfEvent } from "../../../lib/stock/ledger.ts";
import type { Lot, StockEvent } from "../../../lib/stock/lot.ts";
import { lotAccount } from "../../../lib/stock/lot-account.ts";
import { storageShares } from "../../../lib/stock/storage-shares.ts";
import { day, TODAY } from "../../support/price-example.ts";
import { cad, eventOf, lotOf } from "../../support/stock-example.ts";

const ten = lotOf(10, 200);
const rent = (amount: string, on: string) => eventOf("stored", 0, on, { amount: cad(amount) });

function shares(events: readonly StockEvent[], lot: Lot = ten, on = "2026-03-01") {
  const account = lotAccount(lot, cad(200), events, day(on));
  const found = storageShares(lot, events, account, day(on), "CAD", (amount) => amount);
  if (found === null) return null;
  const text = [...found.left.values(), ...found.held.values()].map(({ amount }) => amount.toFixed(2));
  return [...text, `= ${found.total.amount.toFixed(2)}`];
}

describe("money for storing a lot", () => {
  test("stays with what is in stock until it leaves, and leaves with it", () => {
    expect(shares([rent("12.00", "2026-01-10")])).toEqual(["12.00", "= 12.00"]);
    expect(shares([rent("12.00", "2026-01-10"), eventOf("drawn", 4, "2026-01-20")])).toEqual([
      "4.80",
      "7.20",
      "= 12.00",
    ]);
  });

  test("is borne by what is on hand on its day, by nothing that left before", () => {
    const events = [eventOf("drawn", 4, "2026-01-20"), rent("12.00", "2026-01-21")];
    expect(shares(events)).toEqual(["0.00", "12.00", "= 12.00"]);
  });

  test("is borne by what leaves on the same day, whichever was recorded first", () => {
    const drawn = eventOf("drawn", 4, "2026-01-20");
    const paid = rent("12.00", "2026-01-20");
    expect(shares([drawn, paid])).toEqual(["4.80", "7.20", "= 12.00"]);
    expect(
      shares([
        { ...drawn, sequence: 2 },
        { ...paid, sequence: 1 },
      ]),
    ).toEqual(["4.80", "7.20", "= 12.00"]);
  });

  test("loses no cent over three that leave one after the other", () => {
    const three = lotOf(3, 30);
    const gone = ["2026-01-20", "2026-01-21", "2026-01-22"].map((on) => eventOf("drawn", 1, on));
    expect(shares([rent("10.00", "2026-01-10"), ...gone], three)).toEqual([
      "3.33",
      "3.34",
      "3.33",
      "= 10.00",
    ]);
  });

  test("counts what was found, and not what is on order", () => {
    const half = lotOf(10, 200, { receipts: [{ quantity: decimal(5), on: day("2026-01-05") }] });
    const held = [eventOf("allocated", 7, "2026-01-06", { requirementId: "a" }), rent("10.00", "2026-01-10")];
    expect(shares(held, half)).toEqual(["10.00", "= 10.00"]);
    const found = [eventOf("found", 2, "2026-01-06"), rent("12.00", "2026-01-10")];
    expect(shares([...found, eventOf("drawn", 3, "2026-01-20")])).toEqual(["3.00", "9.00", "= 12.00"]);
  });

  test("is what moving cost, too", () => {
    const moved = eventOf("moved", 2, "2026-01-10", { placeId: "shed", amount: cad("5.00") });
    expect(shares([moved, eventOf("drawn", 5, "2026-01-20")])).toEqual(["2.50", "2.50", "= 5.00"]);
  });

  test("cannot be said without a rate", () => {
    const events = [rent("12.00", "2026-01-10")];
    const account = lotAccount(ten, cad(200), events, TODAY);
    expect(storageShares(ten, events, account, TODAY, "CAD", () => null)).toBeNull();
  });

  test("is refused where nothing is on hand to bear it", () => {
    const gone = eventOf("drawn", 10, "2026-01-20");
    expect(faultsOfEvent(ten, [gone], rent("1.00", "2026-01-21"), TODAY)).toEqual([
      { path: "on", code: "nothing-on-hand" },
    ]);
    expect(faultsOfEvent(ten, [gone], rent("1.00", "2026-01-20"), TODAY)).toEqual([]);
    const earlier = eventOf("drawn", 10, "2026-01-19");
    expect(faultsOfEvent(ten, [rent("1.00", "2026-01-20")], earlier, TODAY)).toMatchObject([
      { code: "event-in-the-way", values: { kind: "stored" } },
    ]);
  });
});
