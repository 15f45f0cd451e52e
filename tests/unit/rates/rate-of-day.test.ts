import { describe, expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal, roundHalfUp } from "../../../lib/decimal.ts";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import { money } from "../../../lib/money/money.ts";
import type { ExchangeRate, RateBook } from "../../../lib/rates/exchange-rate.ts";
import { inCurrency, rateOfDay } from "../../../lib/rates/rate-of-day.ts";

function rate(on: string, pair: string, value: string, source = "a bank"): ExchangeRate {
  const [base, quote] = pair.split("/") as [CurrencyCode, CurrencyCode];
  return { on: localDate(on), base, quote, rate: decimal(value), source };
}
function book(rates: readonly ExchangeRate[], chosen: RateBook["chosen"] = {}): RateBook {
  return { rates, chosen };
}
function asked(rates: RateBook, pair: string, day: string, today = "2025-12-31"): string {
  const [from, to] = pair.split("/") as [CurrencyCode, CurrencyCode];
  const found = rateOfDay(rates, from, to, localDate(day), localDate(today));
  if (!found.known) return found.reason;
  return `${roundHalfUp(found.rate, 6)} of ${found.on} by ${found.source}${found.stale ? ", stale" : ""}`;
}

const dollar = book([rate("2024-03-08", "USD/CAD", "1.35"), rate("2024-03-01", "USD/CAD", "1.36")]);

describe("for a past day", () => {
  test("the latest rate on or before it counts", () => {
    expect(asked(dollar, "USD/CAD", "2024-03-08")).toBe("1.35 of 2024-03-08 by a bank");
    expect(asked(dollar, "USD/CAD", "2024-03-07")).toBe("1.36 of 2024-03-01 by a bank");
  });

  test("it may be seven days old, not eight", () => {
    expect(asked(dollar, "USD/CAD", "2024-03-15")).toBe("1.35 of 2024-03-08 by a bank");
    expect(asked(dollar, "USD/CAD", "2024-03-16")).toBe("no-rate");
  });

  test("a later rate never counts", () => {
    expect(asked(dollar, "USD/CAD", "2024-02-29")).toBe("no-rate");
  });
});

describe("for today", () => {
  test("a rate eight to forty-five days old is used and marked stale", () => {
    expect(asked(dollar, "USD/CAD", "2024-03-15", "2024-03-15")).toBe("1.35 of 2024-03-08 by a bank");
    expect(asked(dollar, "USD/CAD", "2024-03-16", "2024-03-16")).toBe("1.35 of 2024-03-08 by a bank, stale");
    expect(asked(dollar, "USD/CAD", "2024-04-22", "2024-04-22")).toBe("1.35 of 2024-03-08 by a bank, stale");
  });

  test("an older one is not", () => {
    expect(asked(dollar, "USD/CAD", "2024-04-23", "2024-04-23")).toBe("no-rate");
  });

  test("a day ahead counts as today", () => {
    expect(asked(dollar, "USD/CAD", "2024-04-23", "2024-04-22")).toBe("1.35 of 2024-03-08 by a bank, stale");
    expect(asked(dollar, "USD/CAD", "2024-03-08", "2024-03-07")).toBe("1.36 of 2024-03-01 by a bank");
  });
});

test("a currency is itself, without any rate", () => {
  expect(asked(book([]), "CAD/CAD", "2024-03-08")).toBe("1 of 2024-03-08 by same currency");
});

describe("the other way round", () => {
  test("is a division", () => {
    const found = rateOfDay(dollar, "CAD", "USD", localDate("2024-03-08"), localDate("2024-03-08"));
    expect(found.known && inCurrency(money("135", "CAD"), "USD", found).amount.toString()).toBe("100");
  });

  test("a pair published both ways uses the newer", () => {
    const both = book([...dollar.rates, rate("2024-03-10", "CAD/USD", "0.75")]);
    expect(asked(both, "USD/CAD", "2024-03-11")).toBe("1.333333 of 2024-03-10 by a bank");
  });
});

describe("through a common currency", () => {
  const euro = book([
    rate("2024-03-08", "EUR/USD", "1.0932", "a central bank"),
    rate("2024-03-08", "EUR/CAD", "1.4734", "a central bank"),
  ]);

  test("two rates of one source make the third by division", () => {
    expect(asked(euro, "USD/CAD", "2024-03-08")).toBe("1.347786 of 2024-03-08 by a central bank");
    const found = rateOfDay(euro, "USD", "CAD", localDate("2024-03-08"), localDate("2024-03-08"));
    expect(found.known && inCurrency(money("1.0932", "USD"), "CAD", found).amount.toString()).toBe("1.4734");
  });

  test("is dated, and aged, by the older of the two", () => {
    const uneven = book([
      rate("2024-03-08", "EUR/USD", "1.0932", "a central bank"),
      rate("2024-03-01", "EUR/CAD", "1.47", "a central bank"),
    ]);
    expect(asked(uneven, "USD/CAD", "2024-03-08")).toContain("of 2024-03-01");
    expect(asked(uneven, "USD/CAD", "2024-03-09")).toBe("no-rate");
  });

  test("never mixes two sources", () => {
    const mixed = book([
      rate("2024-03-08", "EUR/USD", "1.09", "one"),
      rate("2024-03-08", "EUR/CAD", "1.47", "two"),
    ]);
    expect(asked(mixed, "USD/CAD", "2024-03-08")).toBe("no-rate");
  });

  test("gives way to the pair's own rate of the same day", () => {
    const own = book([...euro.rates, rate("2024-03-08", "USD/CAD", "1.35", "a central bank")]);
    expect(asked(own, "USD/CAD", "2024-03-08")).toBe("1.35 of 2024-03-08 by a central bank");
  });
});

describe("of several sources", () => {
  const two = [
    rate("2024-03-07", "USD/CAD", "1.35", "one"),
    rate("2024-03-08", "USD/CAD", "1.36", "two"),
    rate("2024-03-09", "USD/CAD", "1.37", "one"),
  ];

  test("the chosen one counts, even when another is newer or has the only rate", () => {
    expect(asked(book(two, { USD: "one" }), "USD/CAD", "2024-03-08")).toBe("1.35 of 2024-03-07 by one");
    expect(asked(book(two, { CAD: "one" }), "CAD/USD", "2024-03-08")).toBe("0.740741 of 2024-03-07 by one");
    expect(asked(book(two, { USD: "three" }), "USD/CAD", "2024-03-08")).toBe("no-rate");
  });

  test("when each currency has its own chosen one, the newer of the two counts", () => {
    expect(asked(book(two, { USD: "one", CAD: "two" }), "USD/CAD", "2024-03-08")).toBe(
      "1.36 of 2024-03-08 by two",
    );
  });

  test("with none chosen the newest on or before the day counts", () => {
    expect(asked(book(two), "USD/CAD", "2024-03-08")).toBe("1.36 of 2024-03-08 by two");
    expect(asked(book(two), "USD/CAD", "2024-03-09")).toBe("1.37 of 2024-03-09 by one");
  });

  test("of one day the first by name counts", () => {
    const same = [rate("2024-03-08", "USD/CAD", "1.36", "two"), rate("2024-03-08", "USD/CAD", "1.35", "one")];
    expect(asked(book(same), "USD/CAD", "2024-03-08")).toBe("1.35 of 2024-03-08 by one");
  });
});

test("of two rates of one source, pair and day the later entered counts", () => {
  const corrected = book([rate("2024-03-08", "USD/CAD", "1.53"), rate("2024-03-08", "USD/CAD", "1.35")]);
  expect(asked(corrected, "USD/CAD", "2024-03-08")).toBe("1.35 of 2024-03-08 by a bank");
});

test("what was seen at 1.35 costs 16.58 when the rate is 1.37", () => {
  const moved = book([rate("2024-03-08", "USD/CAD", "1.35"), rate("2024-06-03", "USD/CAD", "1.37")]);
  const found = rateOfDay(moved, "USD", "CAD", localDate("2024-06-03"), localDate("2024-06-03"));
  expect(
    found.known && roundHalfUp(inCurrency(money("12.10", "USD"), "CAD", found).amount, 2).toString(),
  ).toBe("16.58");
});
