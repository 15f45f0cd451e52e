import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Decimal, decimal } from "../../lib/decimal.ts";
import { lengthOf, lengthText } from "../../lib/measure/length-text.ts";
import { UNIT_SYSTEMS, type UnitSystem } from "../../lib/measure/unit-system.ts";
import { law } from "../support/law.ts";

function read(text: string, system: UnitSystem): Decimal {
  const length = lengthOf(text, system);
  if (!length.ok) throw new Error(`${text}: ${length.reason}`);
  return length.value;
}

const system = fc.constantFrom(...UNIT_SYSTEMS);
const sixtyFourths = fc.integer({ min: 0, max: 640_000 }).map((parts) => decimal(parts).dividedBy(64));
const millionths = fc
  .integer({ min: 0, max: 2_000_000_000 })
  .map((parts) => decimal(parts).dividedBy(1_000_000));

test("a length shown is read back as it was, to the sixty-fourth and to the millionth", () => {
  law(
    fc.property(fc.oneof(sixtyFourths, millionths), system, (value, own) => {
      expect(read(lengthText(value, own), own).toString()).toBe(value.toString());
    }),
    { numRuns: 1000 },
  );
});

test("a length stored as decimal text is read back as it was", () => {
  law(
    fc.property(millionths, system, (value, own) => {
      expect(read(value.toString(), own).toString()).toBe(value.toString());
    }),
  );
});

test("feet and inches are twelve inches and inches, however they are written", () => {
  law(
    fc.property(
      fc.nat(400),
      fc.integer({ min: 0, max: 11 }),
      fc.integer({ min: 1, max: 15 }),
      (feet, inches, parts) => {
        const expected = decimal(feet).times(12).plus(inches).plus(decimal(parts).dividedBy(16)).toString();
        for (const text of [
          `${feet} ft ${inches}-${parts}/16 in`,
          `${feet}' ${inches} ${parts}/16"`,
          `${feet}'-${inches} ${parts}/16"`,
          `${feet} feet ${inches} ${parts}/16`,
        ])
          expect(read(text, "imperial").toString(), text).toBe(expected);
      },
    ),
  );
});

test("a decimal comma and a decimal point are one, where the comma cannot be thousands", () => {
  law(
    fc.property(fc.nat(5000), fc.integer({ min: 0, max: 99 }), (metres, hundredths) => {
      const [comma, point] = [",", "."].map(
        (mark) => `${metres}${mark}${String(hundredths).padStart(2, "0")} m`,
      );
      expect(read(comma ?? "", "metric").toString()).toBe(read(point ?? "", "metric").toString());
    }),
  );
});

test("whatever is typed is a length that is not negative, or refused with a reason", () => {
  const typed = fc.stringMatching(/^[0-9 .,'"/a-z-]{0,20}$/);
  law(
    fc.property(fc.oneof(typed, fc.string()), system, (text, own) => {
      const length = lengthOf(text, own);
      if (length.ok) expect(length.value.isFinite() && !length.value.isNegative()).toBe(true);
      else expect(length.reason).toMatch(/^[a-z-]+$/);
    }),
    { numRuns: 2000 },
  );
});
