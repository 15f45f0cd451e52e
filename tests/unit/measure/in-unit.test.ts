import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { inUnit, UnitMismatch } from "../../../lib/measure/in-unit.ts";
import type { UnitCode } from "../../../lib/measure/units.ts";

const read = (value: string, from: UnitCode, to: UnitCode): string =>
  inUnit({ value: decimal(value), unit: from }, to).toString();

test("lengths, areas, volumes and weights convert exactly", () => {
  expect(read("8", "linear-foot", "inch")).toBe("96");
  expect(read("8", "linear-foot", "millimetre")).toBe("2438.4");
  expect(read("3", "yard", "linear-foot")).toBe("9");
  expect(read("1", "square", "square-foot")).toBe("100");
  expect(read("1", "msf", "square-foot")).toBe("1000");
  expect(read("1", "cubic-yard", "cubic-foot")).toBe("27");
  expect(read("1", "cubic-metre", "litre")).toBe("1000");
  expect(read("2.5", "tonne", "kilogram")).toBe("2500");
  expect(read("1", "mbf", "board-foot")).toBe("1000");
});

test("a unit read as itself is left alone, a bundle too", () => {
  expect(read("7", "bundle", "bundle")).toBe("7");
});

test("lengths are no areas, board feet are no cubic feet, pieces are no bundles", () => {
  expect(() => read("1", "linear-foot", "square-foot")).toThrow(UnitMismatch);
  expect(() => read("1", "board-foot", "cubic-foot")).toThrow(UnitMismatch);
  expect(() => read("1", "piece", "bundle")).toThrow("convertFor");
});
