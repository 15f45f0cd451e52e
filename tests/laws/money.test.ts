import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decimal, ZERO } from "../../lib/decimal.ts";
import { cashTotal } from "../../lib/money/cash-rounding.ts";
import { type CurrencyCode, MINOR_UNITS } from "../../lib/money/currencies.ts";
import { add, money, roundToMinorUnit, subtract, sum } from "../../lib/money/money.ts";
import { split } from "../../lib/money/split.ts";
import { law } from "../support/law.ts";

const currency = fc.constantFrom<CurrencyCode>("CAD", "USD", "JPY", "KWD", "CLF");
/** Six decimals, below zero too. */
const value = fc
  .integer({ min: -2_000_000_000, max: 2_000_000_000 })
  .map((units) => decimal(units).dividedBy(1_000_000));
const weights = fc.array(
  fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 5000 })).map((weight) => decimal(weight).dividedBy(7)),
  { minLength: 1, maxLength: 9 },
);

describe("shares", () => {
  test("sum to the whole, to the minor unit of whatever currency", () => {
    law(
      fc.property(value, currency, weights, (amount, code, by) => {
        const whole = money(amount, code);
        const shares = split(whole, by);
        expect(shares.length).toBe(by.length);
        expect(sum(shares, code).amount.toFixed()).toBe(roundToMinorUnit(whole).amount.toFixed());
      }),
      { numRuns: 500 },
    );
  });

  test("are each whole minor units, within one of the exact share", () => {
    law(
      fc.property(value, currency, weights, (amount, code, by) => {
        const total = by.reduce((all, weight) => all.plus(weight), ZERO);
        const whole = roundToMinorUnit(money(amount, code)).amount;
        const unit = decimal(10).pow(-MINOR_UNITS[code]);
        for (const [index, share] of split(money(amount, code), by).entries()) {
          const weight = total.isZero()
            ? decimal(1).dividedBy(by.length)
            : (by[index] ?? ZERO).dividedBy(total);
          expect(share.amount.decimalPlaces()).toBeLessThanOrEqual(MINOR_UNITS[code]);
          expect(share.amount.minus(whole.times(weight)).abs().lessThan(unit)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("of equal weight differ by one minor unit at most", () => {
    law(
      fc.property(value, currency, fc.integer({ min: 1, max: 12 }), (amount, code, parts) => {
        const shares = split(
          money(amount, code),
          Array.from({ length: parts }, () => decimal(1)),
        );
        const sorted = shares.map((share) => share.amount).sort((a, b) => a.comparedTo(b));
        const spread = (sorted.at(-1) ?? ZERO).minus(sorted[0] ?? ZERO);
        expect(spread.lessThanOrEqualTo(decimal(10).pow(-MINOR_UNITS[code]))).toBe(true);
      }),
    );
  });
});

describe("amounts", () => {
  test("add up to the same in any order", () => {
    law(
      fc.property(fc.array(value, { maxLength: 12 }), (amounts) => {
        const all = amounts.map((amount) => money(amount, "CAD"));
        expect(sum([...all].reverse(), "CAD").amount.toFixed()).toBe(sum(all, "CAD").amount.toFixed());
      }),
    );
  });

  test("added and taken away again leave what was there", () => {
    law(
      fc.property(value, value, (left, right) => {
        const back = subtract(add(money(left, "CAD"), money(right, "CAD")), money(right, "CAD"));
        expect(back.amount.toFixed()).toBe(left.toFixed());
      }),
    );
  });

  test("once rounded do not change when rounded again, nor move by more than half a unit", () => {
    law(
      fc.property(value, currency, (amount, code) => {
        const once = roundToMinorUnit(money(amount, code));
        expect(roundToMinorUnit(once).amount.toFixed()).toBe(once.amount.toFixed());
        const half = decimal(10).pow(-MINOR_UNITS[code]).dividedBy(2);
        expect(once.amount.minus(amount).abs().lessThanOrEqualTo(half)).toBe(true);
      }),
    );
  });

  test("paid in cash are whole coins, at most two cents off", () => {
    law(
      fc.property(value, (amount) => {
        const due = roundToMinorUnit(money(amount, "CAD")).amount;
        const paid = cashTotal(money(amount, "CAD")).amount;
        expect(paid.modulo("0.05").isZero()).toBe(true);
        expect(paid.minus(due).abs().lessThanOrEqualTo("0.02")).toBe(true);
      }),
    );
  });
});
