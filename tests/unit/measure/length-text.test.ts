import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { lengthOf, lengthText } from "../../../lib/measure/length-text.ts";
import type { UnitSystem } from "../../../lib/measure/unit-system.ts";

function read(text: string, system: UnitSystem): string {
  const length = lengthOf(text, system);
  return length.ok ? length.value.toString() : length.reason;
}

test.each([
  ["8 ft 3-1/2 in", "99.5"],
  ["8' 3 1/2\"", "99.5"],
  ["8'-3 1/2\"", "99.5"],
  ["8′ 3½″", "99.5"],
  ["8’ 3 ½”", "99.5"],
  ["8' 6", "102"],
  ["8 foot 6 inches", "102"],
  ["92 5/8", "92.625"],
  ["92-5/8", "92.625"],
  ["92⅝ in.", "92.625"],
  ["5/8", "0.625"],
  ["104 5/8 in", "104.625"],
  ["8 ft", "96"],
  ["8.5 ft", "102"],
  ["8-1/2 ft", "102"],
  ["3,5 in", "3.5"],
  ["2 yd", "72"],
  [".75 in", "0.75"],
  ["0", "0"],
])("%j is %s inches", (text, inches) => {
  expect(read(text, "imperial")).toBe(inches);
});

test.each([
  ["2,44 m", "2440"],
  ["2.44 m", "2440"],
  ["2440 mm", "2440"],
  ["2440", "2440"],
  ["244 cm", "2440"],
  ["2 m 44 cm", "2440"],
  ["0,375 m", "375"],
  ["12,5 mm", "12.5"],
])("%j is %s millimetres", (text, millimetres) => {
  expect(read(text, "metric")).toBe(millimetres);
});

test.each<[string, UnitSystem, string]>([
  ["", "imperial", "missing"],
  ["   ", "metric", "missing"],
  ["-8 ft", "imperial", "negative"],
  ["−3 1/2", "imperial", "negative"],
  ["8 ft 30 cm", "imperial", "mixed-units"],
  ["2440 mm", "imperial", "mixed-units"],
  ["8 ft", "metric", "mixed-units"],
  ["1 m 3 in", "metric", "mixed-units"],
  ["1 m 20", "metric", "length-unit-missing"],
  ["1,220 mm", "metric", "comma-unclear"],
  ["2,440 m", "metric", "comma-unclear"],
  ["8 ft 14 in", "imperial", "inches-past-a-foot"],
  ["8 ft 12 in", "imperial", "inches-past-a-foot"],
  ["3 9/8 in", "imperial", "fraction-unclear"],
  ["3 8/8 in", "imperial", "fraction-unclear"],
  ["3/0 in", "imperial", "not-a-length"],
  ["8 kg", "metric", "not-a-length"],
  ["8 sheets", "imperial", "not-a-length"],
  ["about 8 ft", "imperial", "not-a-length"],
  ["8 x 4", "imperial", "not-a-length"],
  ["3.5 1/2 in", "imperial", "not-a-length"],
  ["8.5 ft 3 in", "imperial", "not-a-length"],
  ["3 in 8 ft", "imperial", "not-a-length"],
  ["8 3 in", "imperial", "not-a-length"],
  ["8 ft 3 in 1/2", "imperial", "not-a-length"],
  ["8-", "imperial", "not-a-length"],
  ["1 m 200 cm", "metric", "not-a-length"],
  ["1.2.3", "metric", "not-a-length"],
  ["1e3", "metric", "not-a-length"],
  ["9".repeat(61), "metric", "too-long"],
])("%j in a %s entry is refused: %s", (text, system, reason) => {
  expect(read(text, system)).toBe(reason);
});

test("a third of an inch is kept to six places", () => {
  expect(read("2-2/3 in", "imperial")).toBe("2.666667");
});

test.each([
  ["99.5", "8 ft 3-1/2 in"],
  ["96", "8 ft"],
  ["3.5", "3-1/2 in"],
  ["0.625", "5/8 in"],
  ["92.640625", "7 ft 8-41/64 in"],
  ["2.666667", "2.666667 in"],
  ["26.666667", "2 ft 2.666667 in"],
  ["0", "0 in"],
])("%s inches are shown as %j", (inches, text) => {
  expect(lengthText(decimal(inches), "imperial")).toBe(text);
});

test("millimetres are shown as they are", () => {
  expect(lengthText(decimal("2440.5"), "metric")).toBe("2440.5 mm");
});
