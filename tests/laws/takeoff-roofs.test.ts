import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import type { CalculatorName } from "../../lib/takeoff/calculators.ts";
import type { Point, View } from "../../lib/takeoff/drawing.ts";
import { hipFactor, slopeFactor } from "../../lib/takeoff/slope.ts";
import type { Takeoff } from "../../lib/takeoff/takeoff-entry.ts";
import { law } from "../support/law.ts";
import { measured, reckoned, viewOf } from "../support/takeoff-example.ts";

const side = fc.integer({ min: 24, max: 900 });
const rise = fc.integer({ min: 1, max: 24 });
const over = fc.integer({ min: 0, max: 36 });

/** An L in whole inches, wing narrower than the side it stands on. */
const lShape = fc
  .record({
    length: side,
    width: side,
    wing: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    wingLength: side,
    slope: rise,
    overhang: over,
  })
  .map(({ wing, ...rest }) => ({ ...rest, wingWidth: Math.max(1, Math.floor(rest.length * wing)) }));

type Sizes = Readonly<Record<string, number>>;
const text = (sizes: Sizes, times = 1) =>
  Object.fromEntries(
    Object.entries(sizes).map(([name, value]) => [name, String(name === "slope" ? value : value * times)]),
  );
const roofOf = (name: CalculatorName, sizes: Sizes, times = 1): Takeoff => reckoned(name, text(sizes, times));
const number = (takeoff: Takeoff, name: string) => decimal(measured(takeoff, name, 12).split(" ")[0] ?? "");

/** Twice the area of a polygon, by the shoelace formula. */
function doubled(points: readonly Point[]): number {
  return Math.abs(
    points.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y];
      return sum + x * nextY - nextX * y;
    }, 0),
  );
}
const facets = (plan: View) => plan.polygons.filter(({ name }) => name === "facet");
const strokes = (plan: View, name: string) => plan.strokes.filter((one) => one.name === name);
const across = (plan: View, name: string) =>
  strokes(plan, name).reduce(
    (sum, { from, to }) => sum + Math.max(Math.abs(from[0] - to[0]), Math.abs(from[1] - to[1])),
    0,
  );

describe("roofs of equal slopes", () => {
  test("a hip roof has the area of a gable over the same plan at the same slope", () => {
    law(
      fc.property(side, side, rise, over, (length, width, slope, overhang) => {
        const hip = roofOf("hip-roof", { length, width, slope, overhang });
        const gable = roofOf("gable-roof", {
          length,
          width,
          slope,
          eaveOverhang: overhang,
          rakeOverhang: overhang,
        });
        expect(number(hip, "roofArea").toString()).toBe(number(gable, "roofArea").toString());
      }),
    );
  });

  test("a shed over half of a gable's width has half of its area", () => {
    law(
      fc.property(side, side, rise, over, (length, half, slope, overhang) => {
        const gable = roofOf("gable-roof", {
          length,
          width: half * 2,
          slope,
          eaveOverhang: overhang,
          rakeOverhang: 0,
        });
        const shed = roofOf("shed-roof", {
          length,
          width: half,
          slope,
          lowOverhang: overhang,
          highOverhang: 0,
          rakeOverhang: 0,
        });
        // both are read at twelve places: rounding each again could part two figures that lie beside a tie
        const apart = number(shed, "roofArea").times(2).minus(number(gable, "roofArea")).abs();
        expect(apart.lessThan("0.00000000001")).toBe(true);
        expect(number(shed, "rafterLength").toString()).toBe(number(gable, "rafterLength").toString());
      }),
    );
  });

  test("steeper is never less roof", () => {
    law(
      fc.property(lShape, (sizes) => {
        fc.pre(sizes.slope < 24);
        const steeper = roofOf("l-shaped-hip-roof", { ...sizes, slope: sizes.slope + 1 });
        expect(
          number(steeper, "roofArea").greaterThan(number(roofOf("l-shaped-hip-roof", sizes), "roofArea")),
        ).toBe(true);
      }),
    );
  });

  test.each(["hip-roof", "gable-roof", "l-shaped-hip-roof"] as const)(
    "lengths of a %s times k: areas times k squared, edges times k",
    (name) => {
      law(
        fc.property(
          lShape,
          fc.integer({ min: 2, max: 9 }),
          ({ overhang, wingWidth, wingLength, ...rest }, k) => {
            const around: Sizes =
              name === "gable-roof" ? { eaveOverhang: overhang, rakeOverhang: overhang } : { overhang };
            const sizes: Sizes = {
              ...rest,
              ...around,
              ...(name === "l-shaped-hip-roof" ? { wingWidth, wingLength } : {}),
            };
            const [small, large] = [roofOf(name, sizes), roofOf(name, sizes, k)];
            expect(number(large, "roofArea").toFixed(6)).toBe(
              number(small, "roofArea")
                .times(k * k)
                .toFixed(6),
            );
            for (const edge of ["eaves", "ridges"])
              expect(number(large, edge).toFixed(6)).toBe(number(small, edge).times(k).toFixed(6));
          },
        ),
      );
    },
  );
});

describe("the drawn slopes of a hip roof over an L", () => {
  test("cover the plan once, so that plan times slope factor is the sum of the slopes", () => {
    law(
      fc.property(lShape, (sizes) => {
        const roof = roofOf("l-shaped-hip-roof", sizes);
        const drawn = facets(viewOf(roof, "plan")).reduce((sum, { points }) => sum + doubled(points) / 2, 0);
        const area = decimal(drawn)
          .dividedBy(144)
          .times(slopeFactor(decimal(sizes.slope)));
        expect(area.dividedBy(number(roof, "roofArea")).minus(1).abs().lessThan("1e-9")).toBe(true);
      }),
    );
  });

  test("meet in hips and valleys at 45 degrees and in level ridges, as long as reckoned", () => {
    law(
      fc.property(lShape, (sizes) => {
        const roof = roofOf("l-shaped-hip-roof", sizes);
        const plan = viewOf(roof, "plan");
        for (const { from, to } of [...strokes(plan, "hip"), ...strokes(plan, "valley")])
          expect(Math.abs(from[0] - to[0])).toBeCloseTo(Math.abs(from[1] - to[1]), 6);
        for (const { from, to } of strokes(plan, "ridge"))
          expect(Math.min(Math.abs(from[0] - to[0]), Math.abs(from[1] - to[1]))).toBeCloseTo(0, 6);
        const factor = hipFactor(decimal(sizes.slope));
        for (const [stroke, measure] of [
          ["hip", "hips"],
          ["valley", "valleys"],
        ] as const)
          expect(number(roof, measure).toFixed(6)).toBe(
            decimal(across(plan, stroke)).dividedBy(12).times(factor).toFixed(6),
          );
        expect(number(roof, "ridges").toFixed(6)).toBe(
          decimal(across(plan, "ridge")).dividedBy(12).toFixed(6),
        );
      }),
    );
  });

  test("rise evenly from their eaves: every corner is as high from each slope it belongs to", () => {
    law(
      fc.property(lShape, (sizes) => {
        const plan = viewOf(roofOf("l-shaped-hip-roof", sizes), "plan");
        const { length, width, wingWidth, wingLength, overhang } = sizes;
        const [right, wide] = [length + 2 * overhang, width + 2 * overhang];
        const inner = right - wingWidth - 2 * overhang;
        const bottom = wide + wingLength;
        const corners = new Set(
          [
            [0, 0],
            [right, 0],
            [right, bottom],
            [inner, bottom],
            [inner, wide],
            [0, wide],
          ].map(String),
        );
        const heights = new Map<string, number>();
        for (const { points } of facets(plan)) {
          const ends = points.filter((point) => corners.has(String(point)));
          const [one, other] = ends;
          if (ends.length !== 2 || one === undefined || other === undefined)
            throw new Error("a slope has one eave");
          const level = one[1] === other[1];
          for (const point of points) {
            const height = level ? Math.abs(point[1] - one[1]) : Math.abs(point[0] - one[0]);
            const key = point.map((value) => value.toFixed(6)).join();
            expect(height).toBeCloseTo(heights.get(key) ?? height, 6);
            heights.set(key, height);
          }
        }
        expect(heights.size).toBeGreaterThanOrEqual(8);
      }),
    );
  });
});
