import { describe, expect, test } from "vitest";
import type * as z from "zod";
import {
  amountIn,
  amountOrZero,
  choice,
  currency,
  day,
  days,
  flag,
  id,
  listOf,
  name,
  note,
  percent,
  quantityOrZero,
  rate,
  share,
  size,
} from "../../lib/entry-fields.ts";

/** What is read, as text; or the first fault. */
function read(schema: z.ZodType, given: unknown): string {
  const parsed = schema.safeParse(given);
  return parsed.success ? String(parsed.data) : (parsed.error.issues[0]?.message ?? "");
}

describe("a number written as text", () => {
  test("is exact, whatever its length", () => {
    expect(read(rate(), "1.234567890123")).toBe("1.234567890123");
  });

  test("may be zero only where nothing is a sensible answer", () => {
    expect(read(amountOrZero(), "0.00")).toBe("0");
    expect(read(quantityOrZero(), "-0")).toBe("0");
    expect(read(rate(), "0")).toBe("not-positive");
  });

  test("below zero is named for what it is", () => {
    expect(read(amountOrZero(), "-0.01")).toBe("negative");
    expect(read(rate(), "-1")).toBe("not-positive");
  });
});

describe("a percentage", () => {
  test("lies between nothing and all, both included", () => {
    expect(read(percent(), "0")).toBe("0");
    expect(read(percent(), "100")).toBe("100");
    expect(read(percent(), "100.000001")).toBe("percent-out-of-range");
    expect(read(percent(), "-1")).toBe("percent-out-of-range");
  });

  test("may go further where it is said how far", () => {
    expect(read(percent(500), "500")).toBe("500");
    expect(read(percent(500), "900")).toBe("percent-out-of-range");
  });

  test("has six places and no sign of it", () => {
    expect(read(percent(), "9.975")).toBe("9.975");
    expect(read(percent(), "1.0000001")).toBe("too-many-places");
    expect(read(percent(), "15 %")).toBe("not-a-number");
  });
});

test("a share is above nothing and at most the whole", () => {
  expect(read(share(), "1")).toBe("1");
  expect(read(share(), "0")).toBe("not-positive");
  expect(read(share(), "1.01")).toBe("percent-out-of-range");
});

test("an amount may be bare or name its currency", () => {
  expect(amountIn().parse("12.50").currency).toBeUndefined();
  expect(amountIn().parse({ amount: "12.50", currency: "USD" }).currency).toBe("USD");
  expect(read(amountIn(), { amount: "12.50", currency: "XYZ" })).toBe("unknown-currency");
});

test("a currency is one of ISO 4217's codes, in capitals", () => {
  expect(read(currency(), "CAD")).toBe("CAD");
  expect(read(currency(), "cad")).toBe("unknown-currency");
  expect(read(currency(), "XAU")).toBe("unknown-currency");
});

test("a day exists and is not before 1990", () => {
  expect(read(day(), "2024-02-29")).toBe("2024-02-29");
  expect(read(day(), "2023-02-29")).toBe("not-a-day");
  expect(read(day(), "1990-01-01")).toBe("1990-01-01");
  expect(read(day(), "1900-01-01")).toBe("day-too-early");
});

test("an id is a UUID of any version, kept in small letters", () => {
  expect(read(id(), "0190F2B4-7F3A-7C11-8A55-5B3A9F1F0001")).toBe("0190f2b4-7f3a-7c11-8a55-5b3a9f1f0001");
  expect(read(id(), "0190f2b4")).toBe("not-an-id");
});

test("a name is trimmed, not empty, and at most 200 characters", () => {
  expect(read(name(), "  spruce ")).toBe("spruce");
  expect(read(name(), "   ")).toBe("missing");
  expect(read(name(), "x".repeat(200))).toHaveLength(200);
  expect(read(name(), "x".repeat(201))).toBe("too-long");
});

test("a note of ten million characters is refused, not kept", () => {
  expect(read(note(), "x".repeat(10_000_000))).toBe("too-long");
});

test("text the database cannot keep is refused: a NUL, half of a pair", () => {
  expect(read(name(), "a\0b")).toBe("not-text");
  expect(read(name(), "a\ud800")).toBe("not-text");
  expect(read(name(), "épinette 🪵")).toBe("épinette 🪵");
});

test("yes and no are no words", () => {
  expect(read(flag(), true)).toBe("true");
  expect(read(flag(), "yes")).toBe("not-yes-or-no");
  expect(read(flag(), undefined)).toBe("missing");
});

test("a list is no longer than it may be", () => {
  expect(read(listOf(name(), 2), ["a", "b"])).toBe("a,b");
  expect(read(listOf(name(), 2), ["a", "b", "c"])).toBe("too-many");
  expect(read(listOf(name()), "a")).toBe("not-a-list");
});

test("a choice forgives capitals and blanks", () => {
  expect(read(choice(["quantity-break"]), "Quantity Break")).toBe("quantity-break");
  expect(read(choice(["quantity-break"]), "bulk")).toBe("unknown-choice");
});

test("days are a whole number, as JSON or as its digits", () => {
  expect(read(days(), 30)).toBe("30");
  expect(read(days(), "30")).toBe("30");
  expect(read(days(), 1.5)).toBe("not-a-number");
  expect(read(days(), 0)).toBe("not-positive");
  expect(read(days(), 3651)).toBe("too-large");
});

test.each([
  ["48 in", "48 inch"],
  ["1220 mm", "1220 millimetre"],
  ["33.3 sq ft", "33.3 square-foot"],
  ["0 in", "not-positive"],
  ["48", "not-a-size"],
  ["48 furlongs", "unknown-unit"],
])("a size of %j is read as %s", (text, answer) => {
  const parsed = size().safeParse(text);
  expect(parsed.success ? `${parsed.data.value} ${parsed.data.unit}` : parsed.error.issues[0]?.message).toBe(
    answer,
  );
});
