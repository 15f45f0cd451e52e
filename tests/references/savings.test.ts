import { describe, expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import { savingParts } from "../../lib/savings/saving-parts.ts";
import { savings } from "../../lib/savings/savings.ts";
import { day, observation, TODAY } from "../support/price-example.ts";
import { amounts, rows } from "../support/saving-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, revisionOf } from "../support/stock-example.ts";

const forNeed = { requirementId: "a" };
const BEFORE = day("2026-01-04");

// A text on purchasing (read): 10,000 bought at 90 where 100 was asked saves 100,000; exact.
test("ten thousand at 90 where 100 is the going price is a discount of 100,000", () => {
  const parts = savingParts({
    paid: cad(90 * 10_000),
    goingAtAcquisition: cad(100 * 10_000),
    goingAtDraw: cad(100 * 10_000),
    carrying: null,
  });
  expect([parts.discount, parts.timing, parts.saving].map((part) => part?.amount.toNumber())).toEqual([
    100_000, 0, 100_000,
  ]);
});

// Derived by exact arithmetic: 45 at 18 and 25 at 20 for a need of 100.
describe("45 bought at 18 and 25 at 20", () => {
  const lots = [lotOf(45, 810), lotOf(25, 500, { id: "second" })];
  const allocated = [
    eventOf("allocated", 45, "2026-01-06", forNeed),
    eventOf("allocated", 25, "2026-01-06", { ...forNeed, lotId: "second" }),
  ];
  const facts = (price: string, events = allocated, before: string | null = null) =>
    factsOf({
      requirements: [needOf("a", revisionOf(100))],
      lots,
      events,
      observations: [
        observation(price, { seenOn: TODAY }),
        ...(before === null ? [] : [observation(before, { seenOn: day("2026-02-19") })]),
      ],
    });
  const held = (price: string) =>
    savings(null, null, TODAY, facts(price)).rows.map((row) => row.saving?.amount.toFixed(2));

  test("are 180 and 50 ahead at 22", () => {
    expect(held("22.00")).toEqual(["180.00", "50.00"]);
  });

  test("are 45 and 75 behind at 17: losses are shown, not cut at nothing", () => {
    expect(held("17.00")).toEqual(["-45.00", "-75.00"]);
    expect(savings(null, null, TODAY, facts("17.00")).unrealised.saving.amount.toFixed(2)).toBe("-120.00");
  });

  test("with 25 of the 45 used at 21.50, realise 87.50 and leave 80.00 unrealised at 22: each sheet once", () => {
    const events = [...allocated.slice(0, 1), eventOf("drawn", 25, "2026-02-20", forNeed)];
    const { realised, unrealised } = savings(null, null, TODAY, facts("22.00", events, "21.50"));
    expect([realised, unrealised].map((part) => part.saving.amount.toFixed(2))).toEqual(["87.50", "80.00"]);
  });
});

// Derived: 50 bought at 14.40, 17.20 when used 92 days later, money at 8 %.
test("money tied up counts: 140.00 before carrying cost is 125.48 after it", () => {
  const requirements = [needOf("a", revisionOf(50))];
  const lot = lotOf(50, 720, { orderedOn: day("2025-11-30") });
  const draw = eventOf("drawn", 50, "2026-03-02", forNeed);
  const observations = [observation("17.20")];
  const given = { requirements, observations, moneyRates: [{ percent: decimal(8), from: null }] };
  const [row] = rows([draw], lot, given);
  expect(amounts(row, "paid", "goingAtDraw", "carrying", "saving")).toEqual([
    "720.00",
    "860.00",
    "14.52",
    "125.48",
  ]);
});

// Competition law on ordinary selling prices (read): what a tag says it "was" is no price anybody paid. Derived, exact.
test("bought at 18.00 off a tag that says 24.99, where the shelf price is 20.00, saves 2.00 and not 6.99", () => {
  const observations = [
    observation("20.00", { seenOn: BEFORE }),
    observation("18.00", { seenOn: BEFORE, terms: "special", until: day("2026-01-10"), note: "was 24.99" }),
  ];
  const [row] = rows([eventOf("drawn", 1, "2026-01-05", forNeed)], lotOf(1, 18), { observations });
  expect(amounts(row, "discount", "saving")).toEqual(["2.00", "2.00"]);
});
