import { expect, test } from "vitest";
import type * as z from "zod";
import type { UnitSystem } from "../../../lib/measure/unit-system.ts";
import { area, count, length } from "../../../lib/takeoff/fields.ts";

function answer(schema: z.ZodType, given: unknown): string {
  const read = schema.safeParse(given);
  return read.success ? String(read.data) : (read.error.issues[0]?.message ?? "");
}

test.each<[UnitSystem, string, string]>([
  ["imperial", "8 ft 3-1/2 in", "99.5"],
  ["imperial", "99.5", "99.5"],
  ["metric", "2,44 m", "2440"],
  ["imperial", "2.44 m", "mixed-units"],
  ["imperial", "0 in", "not-positive"],
  ["imperial", "", "missing"],
  ["imperial", "1000001", "too-large"],
  ["imperial", "-3", "negative"],
])("a %s length %j is %s", (system, text, expected) => {
  expect(answer(length(system), text)).toBe(expected);
});

test("a length that may be zero is zero", () => {
  expect(answer(length("metric", { zero: true }), "0")).toBe("0");
});

test("a length not given is missing, and a number is not text", () => {
  expect(answer(length("metric"), undefined)).toBe("missing");
  expect(answer(length("metric"), 2440)).toBe("not-text");
});

test.each<[UnitSystem, string, string]>([
  ["imperial", "320", "320"],
  ["imperial", "320 sq ft", "320"],
  ["imperial", "3.2 squares", "320"],
  ["metric", "12,5", "12.5"],
  ["metric", "12.5 m²", "12.5"],
  ["metric", "320 sq ft", "mixed-units"],
  ["imperial", "8 ft", "not-an-area"],
  ["imperial", "big", "not-an-area"],
  ["imperial", "0", "not-positive"],
  ["imperial", "-1", "negative"],
  ["imperial", " ", "missing"],
  ["imperial", "10000001", "too-large"],
])("a %s area %j is %s", (system, text, expected) => {
  expect(answer(area(system), text)).toBe(expected);
});

test.each([
  ["4", "4"],
  ["4.0", "4"],
  ["4.5", "not-whole"],
  ["0", "not-positive"],
  ["-4", "negative"],
  ["four", "not-a-number"],
  ["", "missing"],
  ["100001", "too-large"],
])("a count %j is %s", (text, expected) => {
  expect(answer(count(), text)).toBe(expected);
});

test("a count that may be zero is zero, never minus zero", () => {
  expect(answer(count({ zero: true }), "-0")).toBe("0");
});
