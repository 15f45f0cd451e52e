import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { StockEvent } from "../../../lib/stock/lot.ts";
import { LotDisagrees, lotState, withdrawalCost } from "../../../lib/stock/lot-state.ts";
import { day } from "../../support/price-example.ts";
import { cad, eventOf, lotOf } from "../../support/stock-example.ts";

const ten = lotOf(10, 200);
const forNeed = (id: string) => ({ requirementId: id });

function state(events: readonly StockEvent[], on = "2026-03-01", lot = ten) {
  const { free, allocated, drawn, drawnForNone, gone } = lotState(lot, events, day(on));
  return {
    free: free.toNumber(),
    allocated: Object.fromEntries([...allocated].map(([id, quantity]) => [id, quantity.toNumber()])),
    drawn: Object.fromEntries([...drawn].map(([id, quantity]) => [id, quantity.toNumber()])),
    drawnForNone: drawnForNone.toNumber(),
    gone: gone.toNumber(),
  };
}

describe("a lot's quantities", () => {
  test("are nothing before it was ordered", () => {
    expect(state([], "2026-01-04").free).toBe(0);
  });

  test("are all free on the day it was ordered", () => {
    expect(state([], "2026-01-05").free).toBe(10);
  });

  test("are as they stood at the end of a day, whatever came later", () => {
    const events = [
      eventOf("allocated", 4, "2026-01-06", forNeed("a")),
      eventOf("allocated", 6, "2026-01-07", forNeed("b")),
    ];
    expect(state(events, "2026-01-06")).toMatchObject({ free: 6, allocated: { a: 4 } });
  });

  test("count no event of another lot", () => {
    expect(state([eventOf("allocated", 4, "2026-01-06", { ...forNeed("a"), lotId: "other" })]).free).toBe(10);
  });

  test("of one day change in the order of recording, whatever the order they are listed in", () => {
    const first = eventOf("allocated", 10, "2026-01-06", forNeed("a"));
    const second = eventOf("released", 10, "2026-01-06", forNeed("a"));
    expect(state([second, first]).free).toBe(10);
  });

  test("include what was found beyond what was acquired", () => {
    expect(state([eventOf("found", "1.5", "2026-01-09")]).free).toBe(11.5);
  });

  test("are each where the last thing that happened put them", () => {
    const money = { amount: cad(1) };
    const events = [
      eventOf("returned", 1, "2026-01-09", money),
      eventOf("sold", 2, "2026-01-09", money),
      eventOf("written-off", 3, "2026-01-09"),
      eventOf("missing", "0.5", "2026-01-09"),
    ];
    const { returned, sold, writtenOff, missing, free } = lotState(ten, events, day("2026-01-09"));
    expect([returned, sold, writtenOff, missing, free].map((quantity) => quantity.toNumber())).toEqual([
      1, 2, 3, 0.5, 3.5,
    ]);
  });

  test("that contradict each other are an error that names the event to undo", () => {
    const event = eventOf("drawn", 11, "2026-01-09");
    expect(() => state([event])).toThrow(LotDisagrees);
    expect(() => state([event])).toThrow(event.id);
  });
});

describe("a draw", () => {
  const allocated = eventOf("allocated", 4, "2026-01-06", forNeed("a"));

  test("takes the requirement's own allocation first", () => {
    expect(state([allocated, eventOf("drawn", 3, "2026-01-07", forNeed("a"))])).toMatchObject({
      free: 6,
      allocated: { a: 1 },
      drawn: { a: 3 },
    });
  });

  test("takes free stock for what its own allocation does not hold", () => {
    expect(state([allocated, eventOf("drawn", 6, "2026-01-07", forNeed("a"))])).toMatchObject({
      free: 4,
      allocated: {},
      drawn: { a: 6 },
    });
  });

  test("for another requirement leaves the allocation alone", () => {
    expect(state([allocated, eventOf("drawn", 6, "2026-01-07", forNeed("b"))])).toMatchObject({
      free: 0,
      allocated: { a: 4 },
      drawn: { b: 6 },
    });
  });

  test("for no requirement takes free stock", () => {
    expect(state([allocated, eventOf("drawn", 6, "2026-01-07")])).toMatchObject({
      free: 0,
      allocated: { a: 4 },
      drawnForNone: 6,
    });
  });

  test("that is undone puts everything back as it was", () => {
    const draw = eventOf("drawn", 3, "2026-01-07", forNeed("a"));
    expect(state([allocated, draw].filter((event) => event !== draw))).toEqual(state([allocated]));
  });
});

describe("what a withdrawal costs", () => {
  const cost = (before: number, quantity: number) =>
    withdrawalCost(cad("100.00"), decimal(3), decimal(before), decimal(quantity)).amount.toFixed(2);

  test("is its share of the lot's cost, so rounded that all of them add up to it", () => {
    expect([cost(0, 1), cost(1, 1), cost(2, 1)]).toEqual(["33.33", "33.34", "33.33"]);
  });

  test("is the same for several taken at once as for each taken alone", () => {
    expect(cost(1, 2)).toBe("66.67");
  });

  test("is nothing for what was found beyond what was paid for", () => {
    expect(cost(3, 1)).toBe("0.00");
  });

  test("keeps a half cent that a rounded share would lose", () => {
    expect(withdrawalCost(cad("3.015"), decimal(3), decimal(0), decimal(1)).amount.toFixed(2)).toBe("1.01");
  });
});
