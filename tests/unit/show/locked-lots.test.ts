import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { freeLots, smaller } from "../../../lib/show/free-lots.ts";
import { lockedLots } from "../../../lib/show/locked-lots.ts";
import { day, TODAY } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

const forA = { requirementId: "a" };
const A = new Set(["a"]);
const requirements = [needOf("a", revisionOf(10)), needOf("b", revisionOf(5))];

test("a lot that serves a need says what is set aside, what is used, and its part of the cost", () => {
  const facts = factsOf({
    requirements,
    lots: [lotOf(10, 200)],
    events: [
      eventOf("allocated", 6, "2026-01-06", forA),
      eventOf("drawn", 2, "2026-01-07", forA),
      eventOf("allocated", 3, "2026-01-08", { requirementId: "b" }),
    ],
  });
  // 2 used + 4 set aside, 20.00 each; what is set aside for another need is not counted
  expect(lockedLots(TODAY, facts, A, "en-CA")).toMatchObject([
    { lotId: "lot", setAside: { text: "4" }, used: { text: "2" }, cost: "120.00", onOrder: null },
  ]);
});

test("lots that serve another need, and free ones, are left out", () => {
  const facts = factsOf({
    requirements,
    lots: [lotOf(10, 200), lotOf(10, 200, { id: "free" })],
    events: [eventOf("allocated", 3, "2026-01-08", { requirementId: "b" })],
  });
  expect(lockedLots(TODAY, facts, A, "en-CA")).toEqual([]);
});

test("a lot whose cost cannot be said has none, not zero", () => {
  const facts = factsOf({
    requirements,
    lots: [lotOf(10, 200, { storeId: null })],
    events: [eventOf("allocated", 3, "2026-01-08", forA)],
  });
  expect(lockedLots(TODAY, facts, A, "en-CA")).toMatchObject([{ cost: null, setAside: { text: "3" } }]);
});

test("free stock is offered from the oldest lot on; a lot with none of it free is not", () => {
  const lots = [
    lotOf(4, 50, { id: "new", orderedOn: day("2026-02-01") }),
    lotOf(10, 200),
    lotOf(2, 20, { id: "held" }),
  ];
  const events = [
    eventOf("allocated", 7, "2026-01-08", forA),
    eventOf("allocated", 2, "2026-01-08", { ...forA, lotId: "held" }),
  ];
  expect(freeLots(lots, events, TODAY, "en-CA").map(({ lotId, free }) => [lotId, free])).toEqual([
    ["lot", "3"],
    ["new", "4"],
  ]);
});

test("a form begins with the smaller of what is free and what is open", () => {
  expect([smaller(decimal("3"), decimal("2.5")), smaller(decimal("2"), decimal("2.5"))]).toEqual([
    "2.5",
    "2",
  ]);
});
