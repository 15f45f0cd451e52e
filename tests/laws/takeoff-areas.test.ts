import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Decimal, decimal, ONE } from "../../lib/decimal.ts";
import { gappedRows, lappedRows } from "../../lib/takeoff/boards.ts";
import { purchaseOf } from "../../lib/takeoff/purchase.ts";
import { atSpacing } from "../../lib/takeoff/spacing.ts";
import { law } from "../support/law.ts";
import { lumber } from "../support/some-material.ts";
import { lined, lineOf, measured, reckoned } from "../support/takeoff-example.ts";

const side = fc.integer({ min: 1, max: 2000 });
const part = fc.record({
  shape: fc.constantFrom("rectangle", "triangle"),
  width: side.map(String),
  height: side.map(String),
  count: fc.integer({ min: 1, max: 5 }).map(String),
});
const parts = fc.array(part, { minLength: 1, maxLength: 8 });
type Part = Readonly<{ shape: string; width: string; height: string; count: string }>;

const whole = (some: readonly object[]) => measured(reckoned("area", { parts: some }), "wholeArea", 12);
const numberOf = (text: string | undefined) => decimal(text?.split(" ")[0] ?? "");

describe("areas", () => {
  test("the order of parts never matters, and parts apart make the whole", () => {
    law(
      fc.property(parts, parts, (some, more) => {
        expect(whole([...more, ...some])).toBe(whole([...some, ...more]));
        const apart = numberOf(whole(some)).plus(numberOf(whole(more)));
        expect(numberOf(whole([...some, ...more])).toFixed(6)).toBe(apart.toFixed(6));
      }),
    );
  });

  test("a rectangle is its two triangles", () => {
    law(
      fc.property(side, side, (width, height) => {
        const sizes = { width: String(width), height: String(height) };
        expect(whole([{ shape: "rectangle", ...sizes }])).toBe(
          whole([{ shape: "triangle", ...sizes, count: "2" }]),
        );
      }),
    );
  });

  // Euclid's formula: m2 - n2, 2mn and m2 + n2 are the sides of a right triangle.
  test("a right triangle by its sides is half its legs' rectangle", () => {
    law(
      fc.property(fc.integer({ min: 2, max: 30 }), fc.integer({ min: 1, max: 29 }), (m, n) => {
        fc.pre(m > n);
        const [one, other, long] = [m * m - n * n, 2 * m * n, m * m + n * n].map(String);
        expect(whole([{ shape: "three-sides", side: long, secondSide: one, thirdSide: other }])).toBe(
          whole([{ shape: "triangle", width: one, height: other }]),
        );
      }),
    );
  });

  test("lengths times k make areas times k squared", () => {
    law(
      fc.property(parts, fc.integer({ min: 2, max: 20 }), (some, k) => {
        const scaled = some.map((one: Part) => ({
          ...one,
          width: String(Number(one.width) * k),
          height: String(Number(one.height) * k),
        }));
        expect(numberOf(whole(scaled)).toFixed(6)).toBe(
          numberOf(whole(some))
            .times(k * k)
            .toFixed(6),
        );
      }),
    );
  });

  test("what is covered and what is open make the wall", () => {
    law(
      fc.property(side, side, fc.integer({ min: 1, max: 3 }), (length, height, count) => {
        fc.pre(length >= 4);
        const opening = {
          width: String(Math.max(1, Math.floor(length / 4))),
          height: String(height),
          count: String(count),
        };
        const wall = reckoned("area", {
          parts: [{ shape: "rectangle", width: String(length), height: String(height) }],
          openings: [opening],
        });
        const [net] = lined(wall, "surface", 12);
        const sum = numberOf(net).plus(numberOf(measured(wall, "openingArea", 12)));
        expect(sum.toFixed(6)).toBe(numberOf(measured(wall, "wholeArea", 12)).toFixed(6));
      }),
    );
  });
});

describe("volumes", () => {
  test("a slab's lengths times k make its volume times k cubed", () => {
    law(
      fc.property(side, side, side, fc.integer({ min: 2, max: 9 }), (length, width, thickness, k) => {
        const poured = (times: number) =>
          lineOf(
            reckoned("slab", {
              length: String(length * times),
              width: String(width * times),
              thickness: String(thickness * times),
            }),
            "concrete",
          ).quantity.value;
        expect(poured(k).toFixed(6)).toBe(
          poured(1)
            .times(k ** 3)
            .toFixed(6),
        );
      }),
    );
  });
});

describe("pieces at a spacing", () => {
  const positive = fc.integer({ min: 1, max: 4000 }).map((eighths) => decimal(eighths).dividedBy(8));
  const within = (value: Decimal, limit: Decimal) => value.lessThanOrEqualTo(limit);

  test("reach the end, and one fewer does not", () => {
    law(
      fc.property(positive, positive, (extent, spacing) => {
        const spaces = atSpacing(extent, spacing).minus(ONE);
        expect(within(extent, spaces.times(spacing))).toBe(true);
        expect(within(extent, spaces.minus(ONE).times(spacing))).toBe(false);
      }),
    );
  });

  test("rows side by side with their gaps fill the extent, and one fewer leaves a gap", () => {
    law(
      fc.property(positive, positive, positive, (extent, width, gap) => {
        const reach = (rows: Decimal) => rows.times(width).plus(rows.minus(ONE).times(gap));
        const rows = gappedRows(extent, width, gap);
        // The last may be a gap short of the end: one board less would leave more than that.
        expect(within(extent, reach(rows))).toBe(true);
        expect(within(extent, reach(rows.minus(ONE)))).toBe(false);
      }),
    );
  });

  test("lapped rows fill the extent, and one fewer does not", () => {
    law(
      fc.property(positive, positive, positive, (extent, width, exposure) => {
        fc.pre(exposure.lessThanOrEqualTo(width));
        const reach = (rows: Decimal) => (rows.isZero() ? rows : width.plus(rows.minus(ONE).times(exposure)));
        const rows = lappedRows(extent, width, exposure);
        expect(within(extent, reach(rows))).toBe(true);
        expect(within(extent, reach(rows.minus(ONE)))).toBe(false);
      }),
    );
  });
});

describe("cuts from pieces", () => {
  const wall = (spacing: number) =>
    reckoned("walls", {
      walls: [{ length: "40 ft", height: "8 ft" }],
      studSpacing: String(spacing),
      studsPerOpening: "0",
      plateRows: "3",
      plateThickness: "1 1/2",
      drywallFaces: "0",
    });

  test("a longer piece never takes more pieces, and the pieces hold all cuts", () => {
    law(
      fc.property(
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 8, max: 40 }),
        fc.integer({ min: 0, max: 20 }),
        (spacing, feet, more) => {
          const studs = lineOf(wall(spacing), "studs");
          const pieces = (length: number) => {
            const bought = purchaseOf(studs, lumber("2x4", `${length} ft`));
            if (!bought.ok || studs.cut === null) throw new Error("a stud is shorter than 8 ft");
            expect(
              bought.quantity.value
                .times(length)
                .greaterThanOrEqualTo(studs.quantity.value.times(studs.cut.value)),
            ).toBe(true);
            return bought.quantity.value;
          };
          expect(pieces(feet + more).lessThanOrEqualTo(pieces(feet))).toBe(true);
        },
      ),
    );
  });

  test("a wider spacing never takes more studs", () => {
    law(
      fc.property(fc.integer({ min: 4, max: 40 }), fc.integer({ min: 0, max: 20 }), (spacing, more) => {
        const studs = (at: number) => lineOf(wall(at), "studs").quantity.value;
        expect(studs(spacing + more).lessThanOrEqualTo(studs(spacing))).toBe(true);
      }),
    );
  });
});
