import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { thinned, trendChart } from "../../../lib/show/trend-chart.ts";
import { DRAWING, trendDrawing } from "../../../lib/show/trend-drawing.ts";
import type { TrendLot } from "../../../lib/show/trend-lots.ts";
import type { TrendPoint } from "../../../lib/show/trend-points.ts";
import { daysAgo, TODAY } from "../../support/price-example.ts";

let count = 0;

function point(value: string, given: Partial<TrendPoint> = {}): TrendPoint {
  count += 1;
  return {
    key: `seen-${count}`,
    seenOn: TODAY,
    day: "Mar 2, 2026",
    storeId: "near",
    storeName: "Near",
    terms: "shelf",
    kind: "shelf",
    currency: "CAD",
    value: decimal(value),
    price: value,
    beforeImportCharges: false,
    ...given,
  };
}

const lot: TrendLot = {
  id: "lot",
  letter: "A",
  orderedOn: daysAgo(30),
  day: "Jan 31, 2026",
  origin: "bought",
  quantity: "27",
  quantityExact: "27",
  currency: "CAD",
  value: decimal("29.64"),
  price: "29.64",
  projects: ["Heron Lane workshop"],
};

function chart(points: readonly TrendPoint[], lots: readonly TrendLot[] = []) {
  return trendChart(points, lots, {
    currency: "CAD",
    from: daysAgo(365),
    day: TODAY,
    locale: "en-CA",
    sayPoint: ({ storeName, price }) => `${storeName} ${price}`,
    sayLot: ({ letter, price }) => `${letter} ${price}`,
  });
}

test("what was seen and bought on one day stands in one row, in numbers and in words", () => {
  const rows = chart(
    [point("34"), point("31", { kind: "special", terms: "special" })],
    [{ ...lot, orderedOn: TODAY }],
  )?.rows;
  expect(rows).toMatchObject([
    {
      values: { "shelf 0": 34, "special 0": 31, lot: 29.64 },
      letters: "A",
      says: ["Near 34", "Near 31", "A 29.64"],
    },
  ]);
});

test("two lots of one day share a mark with both letters", () => {
  expect(chart([], [lot, { ...lot, id: "other", letter: "B" }])?.rows[0]?.letters).toBe("A B");
});

test("the five stores with the most prices have a line, by name; the others are counted", () => {
  const points = ["F", "E", "D", "C", "B", "A"].flatMap((name, index) =>
    Array.from({ length: index + 1 }, () => point("30", { storeId: name, storeName: name })),
  );
  const drawn = chart(points);
  expect(drawn?.lines.map(({ name }) => name)).toEqual(["A", "B", "C", "D", "E"]);
  expect(drawn?.otherStores).toBe(1);
});

test("prices in another currency are no part of the chart", () => {
  expect(chart([point("30", { currency: "USD" })])).toBeNull();
});

test("names beside the ends of two lines do not cover each other", () => {
  const lines = chart([
    point("40", { seenOn: daysAgo(9) }),
    point("30"),
    point("30.05", { storeId: "far", storeName: "Far" }),
  ])?.lines;
  const [one = 0, other = 0] = lines?.map(({ label }) => label) ?? [];
  expect(Math.abs(one - other)).toBeGreaterThan(0.5);
});

test("a long series is thinned evenly and keeps its first and its last", () => {
  const all = Array.from({ length: 1001 }, (_, index) => index);
  const some = thinned(all, 11);
  expect(some).toEqual([0, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000]);
});

test("a line is drawn in steps: a price holds until the next one is seen", () => {
  const drawing = chart([point("30", { seenOn: daysAgo(365) }), point("40")]);
  if (drawing === null) throw new Error("nothing to draw");
  const { lines } = trendDrawing(drawing);
  const right = DRAWING.width - DRAWING.right;
  expect(lines[0]?.path).toMatch(new RegExp(`^M${DRAWING.left}\\.0 [\\d.]+H${right}\\.0V[\\d.]+$`));
});

test("the dearer of two prices stands higher", () => {
  const drawing = chart([point("30", { seenOn: daysAgo(10) }), point("40")]);
  if (drawing === null) throw new Error("nothing to draw");
  const [cheap, dear] = trendDrawing(drawing).lines[0]?.circles ?? [];
  expect(Number(dear?.y)).toBeLessThan(Number(cheap?.y));
});
