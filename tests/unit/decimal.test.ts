import { expect, test } from "vitest";
import { Decimal, decimal, roundHalfUp, roundUpToStep } from "../../lib/decimal.ts";

test("half rounds up, away from zero", () => {
  expect(roundHalfUp(decimal("0.025"), 2).toString()).toBe("0.03");
  expect(roundHalfUp(decimal("-0.025"), 2).toString()).toBe("-0.03");
});

test("just under a half rounds down", () => {
  expect(roundHalfUp(decimal("0.0249999999999999999999"), 2).toString()).toBe("0.02");
});

test("a tie that a division left a digit short of is still a tie", () => {
  const third = decimal(1).dividedBy(3);
  const dusty = decimal("1.005").minus(decimal("1e-38"));
  expect(roundHalfUp(dusty, 2).toString()).toBe("1.01");
  expect(roundHalfUp(third.times(3).minus("0.995"), 2).toString()).toBe("0.01");
});

test("a whole number of steps is not rounded up by division dust", () => {
  const boardFeetEach = decimal(70).dividedBy(3);
  expect(roundUpToStep(decimal(70).dividedBy(boardFeetEach).plus("1e-38"), decimal(1)).toString()).toBe("3");
});

test("anything really above a step goes to the next", () => {
  expect(roundUpToStep(decimal("3.0000001"), decimal(1)).toString()).toBe("4");
  expect(roundUpToStep(decimal("0.5333333"), decimal("0.001")).toString()).toBe("0.534");
  expect(roundUpToStep(decimal(0), decimal(1)).toString()).toBe("0");
});

test("small and large numbers are written out, never with an exponent", () => {
  expect(decimal("0.000000000000000001").toString()).toBe("0.000000000000000001");
  expect(decimal("1e30").toString()).toBe("1000000000000000000000000000000");
});

test("text that is no number is refused", () => {
  expect(() => decimal("1.2.3")).toThrow("DecimalError");
  expect(() => decimal("1,049")).toThrow("DecimalError");
});

test("a third keeps forty digits", () => {
  expect(new Decimal(1).dividedBy(3).toString()).toBe(`0.${"3".repeat(40)}`);
});
