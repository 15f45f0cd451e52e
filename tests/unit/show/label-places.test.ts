import * as fc from "fast-check";
import { expect, test } from "vitest";
import { labelPlaces } from "../../../lib/show/label-places.ts";
import { law } from "../../support/law.ts";

test("labels far apart stay where they are", () => {
  expect(labelPlaces([0.9, 0.1, 0.5], 0.1)).toEqual([0.9, 0.1, 0.5]);
});

test("two labels at one place stand one above the other", () => {
  expect(labelPlaces([0.5, 0.5], 0.1)).toEqual([0.5, 0.6]);
});

test("a crowd at the top moves down from the end", () => {
  const places = labelPlaces([1, 1, 1], 0.1);
  expect(places.map((place) => place.toFixed(1)).sort()).toEqual(["0.8", "0.9", "1.0"]);
});

test("labels keep their order, their distance, and stay within the axis where there is room", () => {
  const wanted = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 5 });
  law(
    fc.property(wanted, (thousandths) => {
      const places = labelPlaces(
        thousandths.map((thousandth) => thousandth / 1000),
        0.065,
      );
      const sorted = [...places].sort((a, b) => a - b);
      const apart = sorted.slice(1).every((place, index) => place - (sorted[index] ?? 0) > 0.0649);
      const ordered = thousandths.every((one, a) =>
        thousandths.every((other, b) => one >= other || (places[a] ?? 0) < (places[b] ?? 0)),
      );
      return apart && ordered && (sorted[0] ?? 0) >= 0 && (sorted.at(-1) ?? 0) <= 1;
    }),
  );
});
