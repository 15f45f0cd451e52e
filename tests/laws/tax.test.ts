import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localDate } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, ZERO } from "../../lib/decimal.ts";
import { money, roundToMinorUnit } from "../../lib/money/money.ts";
import type { TaxComponent } from "../../lib/tax/region.ts";
import { baseOfInclusive, billTaxes, isRecovered, taxes } from "../../lib/tax/tax.ts";
import { law } from "../support/law.ts";
import { component } from "../support/price-example.ts";

const cents = fc.integer({ min: 1, max: 10_000_000 }).map((value) => decimal(value).dividedBy(100));

/** One to three taxes of up to 25 %, to three places; some on the price and the others. */
const components: fc.Arbitrary<TaxComponent[]> = fc
  .array(
    fc.record({
      thousandths: fc.integer({ min: 0, max: 25_000 }),
      onOthers: fc.boolean(),
      recoverable: fc.boolean(),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((some) =>
    some.map(({ thousandths, onOthers, recoverable }, index) =>
      component(`tax ${index}`, decimal(thousandths).dividedBy(1000).toFixed(), {
        base: onOthers ? "price-plus-other-tax" : "price",
        recoverable,
      }),
    ),
  );

function total(base: Decimal, among: readonly TaxComponent[]): Decimal {
  return taxes(money(base, "CAD"), among).reduce((sum, { amount }) => sum.plus(amount.amount), base);
}
const near = (a: Decimal, b: Decimal) => expect(a.minus(b).abs().lessThan("1e-25")).toBe(true);

describe("tax", () => {
  test("taken out of an amount and put on again gives the amount", () => {
    law(
      fc.property(cents, components, (amount, among) => {
        near(total(baseOfInclusive(money(amount, "CAD"), among).amount, among), amount);
      }),
    );
  });

  test("put on an amount and taken out again gives the amount", () => {
    law(
      fc.property(cents, components, (amount, among) => {
        near(baseOfInclusive(money(total(amount, among), "CAD"), among).amount, amount);
      }),
    );
  });

  test("on so many times as much is so many times as much", () => {
    law(
      fc.property(cents, components, fc.integer({ min: 2, max: 99 }), (amount, among, factor) => {
        near(total(amount.times(factor), among), total(amount, among).times(factor));
      }),
    );
  });

  test("that comes back and tax that does not are all of it", () => {
    const day = localDate("2026-03-02");
    const registrations = [0, 2].map((index) => ({ tax: `tax ${index}`, from: null, until: null }));
    law(
      fc.property(cents, components, (amount, among) => {
        const parts = taxes(money(amount, "CAD"), among);
        const back = parts.filter((part) => isRecovered(part.component, registrations, day));
        const kept = parts.filter((part) => !isRecovered(part.component, registrations, day));
        const sum = (some: typeof parts) => some.reduce((all, part) => all.plus(part.amount.amount), ZERO);
        expect(back.every((part) => part.component.recoverable)).toBe(true);
        near(sum(back).plus(sum(kept)).plus(amount), total(amount, among));
      }),
    );
  });
});

describe("a bill's taxes", () => {
  const lines = fc.array(cents, { minLength: 1, maxLength: 8 });
  const billed = (bases: readonly Decimal[], among: readonly TaxComponent[], way: "per-bill" | "per-line") =>
    billTaxes(
      bases.map((base) => ({ base: money(base, "CAD"), exempt: [] })),
      among,
      way,
    ).map(({ amount }) => amount.amount.toFixed());

  test("do not depend on the order of its lines", () => {
    law(
      fc.property(lines, components, (bases, among) => {
        const turned = [...bases].reverse();
        expect(billed(turned, among, "per-bill")).toEqual(billed(bases, among, "per-bill"));
        expect(billed(turned, among, "per-line")).toEqual(billed(bases, among, "per-line"));
      }),
    );
  });

  test("rounded per bill are within half a cent of exact, per line within half a cent a line", () => {
    law(
      fc.property(lines, components, (bases, among) => {
        const exact = (one: TaxComponent) =>
          bases
            .flatMap((base) => taxes(money(base, "CAD"), among))
            .filter((part) => part.component === one)
            .reduce((sum, part) => sum.plus(part.amount.amount), ZERO);
        for (const [index, one] of among.entries()) {
          const off = (way: "per-bill" | "per-line") =>
            exact(one)
              .minus(billed(bases, among, way)[index] ?? 0)
              .abs();
          expect(off("per-bill").lessThanOrEqualTo("0.005")).toBe(true);
          expect(off("per-line").lessThanOrEqualTo(decimal("0.005").times(bases.length))).toBe(true);
        }
      }),
    );
  });

  test("of one line are the same either way", () => {
    law(
      fc.property(cents, components, (base, among) => {
        const rounded = taxes(money(base, "CAD"), among).map(({ amount }) =>
          roundToMinorUnit(amount).amount.toFixed(),
        );
        expect(billed([base], among, "per-line")).toEqual(rounded);
        expect(billed([base], among, "per-bill")).toEqual(rounded);
      }),
    );
  });
});
