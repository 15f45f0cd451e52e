import { describe, expect, test } from "vitest";
import { type Decimal, decimal, ZERO } from "../../lib/decimal.ts";
import { carryingCost, simpleInterest } from "../../lib/stock/carrying.ts";
import type { StockEvent } from "../../lib/stock/lot.ts";
import { lotAccount } from "../../lib/stock/lot-account.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { day, SHEET, store, TODAY, valuation } from "../support/price-example.ts";
import { amounts, rows } from "../support/saving-example.ts";
import { cad, eventOf, lotOf } from "../support/stock-example.ts";

const total = (values: readonly Decimal[]) => values.reduce((all, value) => all.plus(value), ZERO).toNumber();

// A financial accounting textbook's perpetual table (read): 10 at 91; 15 at 106; 20 used; 20 at 115; 10 at 119; 23 used.
// Printed in whole units of money. IAS 2, paragraphs 23-27 (read): items bought for a project keep their own cost, which is
// what a lot does; taken oldest lot first that is the table's first in, first out.
describe("cost of what was used, first in first out", () => {
  const lots = [
    { id: "first", quantity: 10, each: 91 },
    { id: "second", quantity: 15, each: 106 },
    { id: "third", quantity: 20, each: 115 },
    { id: "fourth", quantity: 10, each: 119 },
  ];
  const drawn: readonly (readonly [lot: string, quantity: number, issue: number])[] = [
    ["first", 10, 1],
    ["second", 10, 1],
    ["second", 5, 2],
    ["third", 18, 2],
  ];
  const accounts = lots.map(({ id, quantity, each }) => {
    const events = drawn
      .filter(([lotId]) => lotId === id)
      .map(
        ([lotId, taken, issue]): StockEvent => ({
          ...eventOf("drawn", taken, issue === 1 ? "2026-01-10" : "2026-02-10"),
          lotId,
        }),
      );
    return lotAccount(lotOf(quantity, 0, { id }), cad(quantity * each), events, TODAY);
  });
  const issued = (on: string) =>
    total(
      accounts.flatMap(({ withdrawals }) =>
        withdrawals.filter(({ event }) => event.on === on).map(({ cost }) => cost.amount),
      ),
    );
  const left = total(accounts.flatMap(({ holdings }) => holdings.map(({ cost }) => cost.amount)));

  test("the first twenty cost 1,970", () => {
    expect(issued("2026-01-10")).toBe(1970);
  });

  test("the next twenty-three cost 2,600", () => {
    expect(issued("2026-02-10")).toBe(2600);
  });

  test("the twelve left cost 1,420", () => {
    expect(left).toBe(1420);
  });

  // Derived: what was available is what was used and what is left.
  test("all of it cost 5,990", () => {
    expect(issued("2026-01-10") + issued("2026-02-10") + left).toBe(5990);
  });
});

// Derived by exact decimal arithmetic from the definition, simple interest on actual days over 365; to the cent.
describe("carrying cost", () => {
  test("2,000 tied up 90 days at 7 % is 34.52, not the 34.82 of daily compounding", () => {
    expect(simpleInterest(cad(2000), decimal(7), 90).amount.toFixed(2)).toBe("34.52");
  });

  test("720 for 92 days at 8 % is 14.52", () => {
    const rates = [{ percent: decimal(8), from: null }];
    const out = [{ on: day("2026-01-01"), amount: cad(720) }];
    expect(carryingCost(out, rates, day("2026-04-03"), "CAD")?.amount.toFixed(2)).toBe("14.52");
  });

  test("25 % a year on 3,000 for a quarter of a year is 187.50", () => {
    expect(simpleInterest(cad(3000), decimal(25), decimal(365).dividedBy(4)).amount.toFixed(2)).toBe(
      "187.50",
    );
  });
});

// Common practice (IAS 2: cost of purchase is without taxes that are recovered): Ontario, 13 %, exact.
describe("a tax that is given back", () => {
  const ontario = (registrations: Parameters<typeof valuation>[0]) => {
    const stores = [store("near", { taxRegion: "CA-ON" })];
    const answer = lotCost(
      lotOf(1, 5000),
      SHEET,
      valuation({ stores, regions: CANADA, ...registrations }),
      TODAY,
    );
    return answer.known ? [answer.cost.amount.toFixed(2), answer.cash.amount.toFixed(2)] : answer.reason;
  };

  test("is cash and not cost: 5,000 cost, 5,650 paid", () => {
    expect(ontario({ registrations: [{ tax: "HST", from: null, until: null }] })).toEqual([
      "5000.00",
      "5650.00",
    ]);
  });

  test("is cost for a buyer who is not registered", () => {
    expect(ontario({})).toEqual(["5650.00", "5650.00"]);
  });
});

// Derived: ten at 20.00, two taken back for 85 % of their price; the eight kept have cost 200 - 34 = 166, 20.75 each.
test("two of ten returned with 15 % withheld: the eight kept and the loss on the two are 166.00", () => {
  const back = eventOf("returned", 2, "2026-02-25", { amount: cad("34.00") });
  const [row] = rows([back], lotOf(10, 200));
  expect(amounts(row, "received", "paid", "saving")).toEqual(["34.00", "40.00", "-6.00"]);
  const { holdings } = lotAccount(lotOf(10, 200), cad(200), [back], TODAY);
  const kept = holdings[0]?.cost.amount.plus(6) ?? ZERO;
  expect([kept.toFixed(2), kept.dividedBy(8).toFixed(2), holdings[0]?.quantity.toFixed()]).toEqual([
    "166.00",
    "20.75",
    "8",
  ]);
});
