import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal } from "../../lib/decimal.ts";
import type { CurrencyCode } from "../../lib/money/currencies.ts";
import { money } from "../../lib/money/money.ts";
import type { ExchangeRate, RateBook } from "../../lib/rates/exchange-rate.ts";
import { inCurrency, rateOfDay } from "../../lib/rates/rate-of-day.ts";
import { law } from "../support/law.ts";
import { daysAgo, TODAY } from "../support/price-example.ts";

const amount = fc.integer({ min: 1, max: 100_000_000 }).map((value) => decimal(value).dividedBy(100));
const figure = fc.integer({ min: 1, max: 9_999_999 }).map((value) => decimal(value).dividedBy(10_000));

function published(on: LocalDate, base: CurrencyCode, quote: CurrencyCode, rate: Decimal): ExchangeRate {
  return { on, base, quote, rate, source: "the bank" };
}
function converted(
  value: Decimal,
  from: CurrencyCode,
  to: CurrencyCode,
  rates: readonly ExchangeRate[],
): Decimal {
  const rate = rateOfDay({ rates, chosen: {} }, from, to, TODAY, TODAY);
  if (!rate.known) throw new Error(rate.reason);
  return inCurrency(money(value, from), to, rate).amount;
}
const near = (a: Decimal, b: Decimal) => expect(a.dividedBy(b).minus(1).abs().lessThan("1e-30")).toBe(true);

describe("a conversion", () => {
  test("there and back is the amount, whichever way round the rate was published", () => {
    law(
      fc.property(amount, figure, fc.boolean(), (value, rate, turned) => {
        const rates = [turned ? published(TODAY, "CAD", "USD", rate) : published(TODAY, "USD", "CAD", rate)];
        near(converted(converted(value, "USD", "CAD", rates), "CAD", "USD", rates), value);
      }),
    );
  });

  test("through a third currency is the two conversions one after the other, unrounded in between", () => {
    law(
      fc.property(amount, figure, figure, fc.boolean(), (value, one, other, turned) => {
        const rates = [
          published(TODAY, "EUR", "USD", one),
          turned ? published(TODAY, "CAD", "EUR", other) : published(TODAY, "EUR", "CAD", other),
        ];
        const steps = converted(converted(value, "USD", "EUR", rates), "EUR", "CAD", rates);
        near(converted(value, "USD", "CAD", rates), steps);
      }),
    );
  });

  test("round a triangle is the amount again", () => {
    law(
      fc.property(amount, figure, figure, (value, one, other) => {
        const rates = [published(TODAY, "EUR", "USD", one), published(TODAY, "EUR", "CAD", other)];
        const there = converted(converted(value, "EUR", "USD", rates), "USD", "CAD", rates);
        near(converted(there, "CAD", "EUR", rates), value);
      }),
    );
  });

  test("of a sum is the sum of the conversions", () => {
    law(
      fc.property(amount, amount, figure, (left, right, rate) => {
        const rates = [published(TODAY, "USD", "CAD", rate)];
        const both = converted(left, "USD", "CAD", rates).plus(converted(right, "USD", "CAD", rates));
        near(converted(left.plus(right), "USD", "CAD", rates), both);
      }),
    );
  });
});

describe("the rate of a day", () => {
  const history = fc
    .array(fc.record({ ago: fc.integer({ min: 0, max: 80 }), rate: figure }), { maxLength: 12 })
    .map((some) => some.map(({ ago, rate }) => published(daysAgo(ago), "USD", "CAD", rate)));
  const asked = fc.integer({ min: 0, max: 80 }).map(daysAgo);
  const book = (rates: readonly ExchangeRate[]): RateBook => ({ rates, chosen: {} });

  test("is never one published later, nor one more than 45 days old, nor one more than 7 unless it is for today", () => {
    law(
      fc.property(history, asked, (rates, day) => {
        const rate = rateOfDay(book(rates), "USD", "CAD", day, TODAY);
        if (!rate.known) return;
        expect(rate.on <= day).toBe(true);
        expect(rate.on >= plusDays(day, day === TODAY ? -45 : -7)).toBe(true);
        expect(rate.stale).toBe(rate.on < plusDays(day, -7));
      }),
    );
  });

  test("is not changed by what is published after it", () => {
    law(
      fc.property(history, figure, asked, fc.integer({ min: 1, max: 20 }), (rates, later, day, days) => {
        const more = [...rates, published(plusDays(day, days), "USD", "CAD", later)];
        expect(rateOfDay(book(more), "USD", "CAD", day, TODAY)).toEqual(
          rateOfDay(book(rates), "USD", "CAD", day, TODAY),
        );
      }),
    );
  });
});
