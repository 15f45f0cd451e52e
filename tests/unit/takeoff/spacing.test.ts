import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { atSpacing, wholeDown, wholeUp } from "../../../lib/takeoff/spacing.ts";

test.each([
  ["96", "16", "7"],
  ["97", "16", "8"],
  ["10", "16", "2"],
])("%s in at %s in takes %s pieces, both ends counted", (extent, spacing, pieces) => {
  expect(atSpacing(decimal(extent), decimal(spacing)).toString()).toBe(pieces);
});

test("what a division leaves in the fortieth digit makes no further piece", () => {
  const third = decimal(1).dividedBy(3);
  expect(wholeUp(decimal(1).dividedBy(third)).toString()).toBe("3");
  expect(wholeDown(third.times(3)).toString()).toBe("1");
});

test("down from less than one is none", () => {
  expect(Object.is(wholeDown(decimal("0.4")).toNumber(), 0)).toBe(true);
});
