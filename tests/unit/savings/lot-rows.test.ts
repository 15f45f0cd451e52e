import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Lot } from "../../../lib/stock/lot.ts";
import { day, observation, rate, valuation } from "../../support/price-example.ts";
import { a, amounts, draw, rows, seenBefore, seenLater } from "../../support/saving-example.ts";
import { cad, eventOf, lotOf, SEVEN_PERCENT } from "../../support/stock-example.ts";

describe("a draw for a requirement", () => {
  test("is valued at the going prices of the day acquired and of the day drawn", () => {
    const [row] = rows([draw]);
    expect(amounts(row, "paid", "goingAtAcquisition", "goingAtDraw")).toEqual(["80.00", "96.00", "104.00"]);
  });

  test("is a discount against the going price when bought, and timing since", () => {
    expect(amounts(rows([draw])[0], "discount", "timing", "saving")).toEqual(["16.00", "8.00", "24.00"]);
  });

  test("bears its part of what holding the lot cost until that day", () => {
    const [row] = rows([draw], lotOf(10, 200), { moneyRates: SEVEN_PERCENT });
    // 80 x 7 % x 51 / 365 = 0.7824...
    expect(amounts(row, "carrying", "saving")).toEqual(["0.78", "23.22"]);
  });

  test("without a money rate is marked as before carrying cost", () => {
    expect(rows([draw])[0]).toMatchObject({ carrying: null, beforeCarrying: true });
  });

  test("is realised, and of the requirement's project", () => {
    expect(rows([draw])[0]).toMatchObject({
      state: "realised",
      kind: "drawn",
      projectId: "job",
      on: "2026-02-25",
    });
  });

  test("with no going price when bought stands without a split", () => {
    const [row] = rows([draw], lotOf(10, 200), { observations: [seenLater] });
    expect(amounts(row, "discount", "timing", "saving")).toEqual([null, null, "24.00"]);
  });

  test("with no going price when drawn is not known, and never zero", () => {
    const [row] = rows([draw], lotOf(10, 200), { observations: [] });
    expect([row?.state, row?.saving]).toEqual(["not-known", null]);
  });

  test("of a lot whose cost cannot be said is not known", () => {
    const [row] = rows([draw], lotOf(10, 200, { storeId: null }));
    expect([row?.state, row?.paid, row?.saving]).toEqual(["not-known", null, null]);
  });

  test("that is undone takes its row back", () => {
    expect(rows([])).toEqual([]);
  });

  test("stays what it was when prices move later", () => {
    const later = observation("40.00", { seenOn: day("2026-02-28") });
    expect(
      amounts(rows([draw], lotOf(10, 200), { observations: [seenBefore, seenLater, later] })[0], "saving"),
    ).toEqual(["24.00"]);
  });

  test("is marked where a going price was drawn between two sightings", () => {
    const old = observation("20.00", { seenOn: day("2025-12-01") });
    const far = lotOf(10, 200, { orderedOn: day("2026-01-10") });
    expect(rows([draw], far, { observations: [old, seenLater] })[0]?.interpolated).toBe(true);
  });
});

describe("what is held for a requirement", () => {
  const allocated = eventOf("allocated", 4, "2026-01-06", a);

  test("is unrealised, marked at the going price of the day asked for", () => {
    const [row] = rows([allocated]);
    expect([row?.kind, row?.state, row?.on]).toEqual(["held", "unrealised", null]);
    expect(amounts(row, "discount", "timing", "saving")).toEqual(["16.00", "8.00", "24.00"]);
  });

  test("and in part drawn is two rows, each unit in one", () => {
    const found = rows([allocated, eventOf("drawn", 1, "2026-02-25", a)]);
    expect(found.map((row) => `${row.kind} ${row.quantity}`)).toEqual(["drawn 1", "held 3"]);
    expect(found.map((row) => row.paid?.amount.toFixed(2))).toEqual(["20.00", "60.00"]);
  });

  test("does not include free stock, which is shown at cost without a saving", () => {
    expect(rows([allocated]).map((row) => row.quantity.toNumber())).toEqual([4]);
  });
});

describe("a draw for no requirement", () => {
  test("makes no saving", () => {
    expect(rows([eventOf("drawn", 4, "2026-02-25")])).toEqual([]);
  });

  test("bears its own part of the lot's cost all the same", () => {
    const third = lotOf(3, 100);
    const events = [eventOf("drawn", 1, "2026-02-24"), eventOf("drawn", 1, "2026-02-25", a)];
    expect(amounts(rows(events, third)[0], "paid")).toEqual(["33.34"]);
  });
});

describe("what left otherwise", () => {
  test("returned: the refund less cost and carrying", () => {
    const back = eventOf("returned", 2, "2026-02-25", { amount: cad("34.00") });
    const [row] = rows([back], lotOf(10, 200), { moneyRates: SEVEN_PERCENT });
    // 40 x 7 % x 51 / 365 = 0.3912...
    expect(amounts(row, "received", "paid", "carrying", "saving")).toEqual([
      "34.00",
      "40.00",
      "0.39",
      "-6.39",
    ]);
  });

  test("sold: the proceeds less cost and carrying", () => {
    const [row] = rows([eventOf("sold", 2, "2026-02-25", { amount: cad("52.00") })]);
    expect([row?.kind, ...amounts(row, "saving")]).toEqual(["sold", "12.00"]);
  });

  test("written off: the whole cost is lost", () => {
    const [row] = rows([eventOf("written-off", 2, "2026-02-25")]);
    expect([row?.kind, ...amounts(row, "received", "saving")]).toEqual(["written-off", null, "-40.00"]);
  });

  test("missed at a count: a loss like what is written off, told apart", () => {
    expect(rows([eventOf("missing", 2, "2026-02-25")])[0]).toMatchObject({
      kind: "written-off",
      missing: true,
      saving: cad(-40),
    });
  });

  test("has no split: nothing was used, so nothing was to be bought", () => {
    const [row] = rows([eventOf("sold", 2, "2026-02-25", { amount: cad("52.00") })]);
    expect(amounts(row, "discount", "timing", "goingAtDraw")).toEqual([null, null, null]);
  });

  test("for money of another country comes at the rate of its day", () => {
    const sold = eventOf("sold", 2, "2026-02-25", { amount: { amount: decimal(40), currency: "USD" } });
    const known = { valuation: valuation({ rates: [rate("2026-02-24", "USD", "CAD", "1.3701")] }) };
    expect(amounts(rows([sold], lotOf(10, 200), known)[0], "received", "saving")).toEqual(["54.80", "14.80"]);
    expect(amounts(rows([sold])[0], "received", "saving")).toEqual([null, null]);
  });
});

describe("salvage", () => {
  const salvaged = { origin: "salvaged", storeId: null, condition: decimal("0.5") } as const;

  test("is valued at its condition, when acquired and when drawn", () => {
    const [row] = rows([draw], lotOf(10, 60, salvaged));
    expect(amounts(row, "goingAtAcquisition", "goingAtDraw", "saving")).toEqual(["48.00", "52.00", "28.00"]);
  });

  test("is held against the best offer at its condition too", () => {
    expect(amounts(rows([draw], lotOf(10, 60, salvaged))[0], "strictSaving")).toEqual(["28.00"]);
  });

  test("for nothing saves all it is worth", () => {
    expect(amounts(rows([draw], lotOf(10, 0, salvaged))[0], "saving")).toEqual(["52.00"]);
  });
});

describe("a discount belongs to", () => {
  const source = (given: Partial<Lot>) => rows([draw], lotOf(10, 200, given))[0]?.source;

  test("the terms the lot was bought under", () => {
    expect([source({ terms: "special" }), source({ terms: "quantity-break" })]).toEqual([
      "special",
      "quantity-break",
    ]);
  });

  test("the choice of store, at a shelf price or where the terms are not known", () => {
    expect([source({ terms: "shelf" }), source({ terms: null })]).toEqual([
      "choice-of-store",
      "choice-of-store",
    ]);
  });

  test("salvage and left-overs, where it is one", () => {
    expect([source({ origin: "salvaged" }), source({ origin: "left-over" })]).toEqual([
      "salvaged",
      "left-over",
    ]);
  });
});
