import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOfEvent, faultsOfLot, faultsOfUndo } from "../../../lib/stock/ledger.ts";
import type { StockEvent } from "../../../lib/stock/lot.ts";
import { day, TODAY } from "../../support/price-example.ts";
import { BOUGHT, cad, eventOf, lotOf } from "../../support/stock-example.ts";

const ten = lotOf(10, 200);
const a = { requirementId: "a" };
const faults = (event: StockEvent, before: readonly StockEvent[] = [], lot = ten) =>
  faultsOfEvent(lot, before, event, TODAY);
const codes = (...given: Parameters<typeof faults>) =>
  faults(...given).map(({ path, code }) => `${path} ${code}`);

describe("an event is refused", () => {
  test("when it takes more than is free, saying how much there is", () => {
    expect(faults(eventOf("allocated", 11, "2026-01-06", a))).toEqual([
      { path: "quantity", code: "more-than-free", values: { has: "10" } },
    ]);
  });

  test("when it releases more than was allocated", () => {
    const allocated = eventOf("allocated", 4, "2026-01-06", a);
    expect(faults(eventOf("released", 5, "2026-01-07", a), [allocated])).toEqual([
      { path: "quantity", code: "more-than-allocated", values: { has: "4" } },
    ]);
  });

  test("when it draws what is allocated to another", () => {
    const allocated = eventOf("allocated", 8, "2026-01-06", a);
    expect(faults(eventOf("drawn", 3, "2026-01-07", { requirementId: "b" }), [allocated])).toEqual([
      { path: "quantity", code: "more-than-free", values: { has: "2" } },
    ]);
  });

  test("when what it draws has not been received", () => {
    const ordered = lotOf(10, 200, { receipts: [{ quantity: decimal(4), on: day("2026-01-20") }] });
    expect(faults(eventOf("drawn", 5, "2026-01-20", a), [], ordered)).toEqual([
      { path: "quantity", code: "not-received-yet", values: { has: "4" } },
    ]);
  });

  test("on the day before it was received", () => {
    expect(
      codes(
        eventOf("drawn", 1, "2026-01-19", a),
        [],
        lotOf(10, 200, { receipts: [{ quantity: decimal(10), on: day("2026-01-20") }] }),
      ),
    ).toEqual(["quantity not-received-yet"]);
  });

  test("before the lot was ordered", () => {
    expect(codes(eventOf("found", 1, "2026-01-04"))).toEqual(["on before-acquisition"]);
  });

  test("on a day more than one ahead", () => {
    expect(codes(eventOf("found", 1, "2026-03-04"))).toEqual(["on day-ahead"]);
  });

  test("with nothing or less", () => {
    expect(codes(eventOf("found", 0, "2026-01-06"))).toEqual(["quantity not-positive"]);
  });

  test("when it allocates to nobody", () => {
    expect(codes(eventOf("allocated", 1, "2026-01-06"))).toEqual(["requirementId missing"]);
  });

  test("when a sale names no proceeds, and when a draw names some", () => {
    expect(codes(eventOf("sold", 1, "2026-01-06"))).toEqual(["amount missing"]);
    expect(codes(eventOf("drawn", 1, "2026-01-06", { amount: cad(5) }))).toEqual([
      "amount amount-not-expected",
    ]);
  });
});

describe("an event is accepted", () => {
  test("one day ahead: late evening, another zone", () => {
    expect(codes(eventOf("found", 1, "2026-03-03"))).toEqual([]);
  });

  test("when it allocates what is only ordered: price-safe, not delivery-safe", () => {
    expect(codes(eventOf("allocated", 10, "2026-01-06", a), [], lotOf(10, 200, { receipts: [] }))).toEqual(
      [],
    );
  });

  test("when it takes exactly what is left", () => {
    expect(codes(eventOf("drawn", 10, "2026-01-06", a))).toEqual([]);
  });
});

describe("a back-dated event", () => {
  const later = eventOf("drawn", 7, "2026-02-10", a);

  test("that a later one leaves nothing for is refused, and the later one is named", () => {
    expect(faults(eventOf("sold", 4, "2026-01-20", { amount: cad(9) }), [later])).toEqual([
      {
        path: "on",
        code: "event-in-the-way",
        values: { event: later.id, kind: "drawn", on: "2026-02-10", quantity: "7" },
      },
    ]);
  });

  test("that leaves enough for the later one is accepted", () => {
    expect(codes(eventOf("sold", 3, "2026-01-20", { amount: cad(9) }), [later])).toEqual([]);
  });
});

describe("an undo", () => {
  const allocated = eventOf("allocated", 10, "2026-01-06", a);
  const draw = eventOf("drawn", 10, "2026-01-07", a);
  const found = eventOf("found", 2, "2026-01-06");
  const drawnAll = eventOf("drawn", 12, "2026-01-07", a);

  test("is refused when a later event could then not have happened, naming it", () => {
    expect(faultsOfUndo(ten, [found, drawnAll], found.id)).toEqual([
      {
        path: "",
        code: "event-in-the-way",
        values: { event: drawnAll.id, kind: "drawn", on: "2026-01-07", quantity: "12" },
      },
    ]);
  });

  test("of an allocation is free where the draw finds it free instead", () => {
    expect(faultsOfUndo(ten, [allocated, draw], allocated.id)).toEqual([]);
  });

  test("of the last draw is always free", () => {
    expect(faultsOfUndo(ten, [allocated, draw], draw.id)).toEqual([]);
  });
});

describe("a lot corrected", () => {
  const draw = eventOf("drawn", 8, "2026-01-07", a);

  test("to less than was drawn of it is refused, naming the draw", () => {
    expect(faultsOfLot(lotOf(7, 200), [draw])).toMatchObject([
      { code: "event-in-the-way", values: { event: draw.id } },
    ]);
  });

  test("to a day after it was drawn is refused", () => {
    expect(faultsOfLot(lotOf(10, 200, { orderedOn: day("2026-01-08") }), [draw])).toHaveLength(1);
  });

  test("to another amount is free", () => {
    expect(faultsOfLot(lotOf(10, 999, { orderedOn: BOUGHT }), [draw])).toEqual([]);
  });
});

test("an event of another lot is a programmer's mistake", () => {
  expect(() => faults(eventOf("found", 1, "2026-01-06", { lotId: "other" }))).toThrow(RangeError);
});
