import { expect, test } from "vitest";
import { cashTotal } from "../../../lib/money/cash-rounding.ts";
import { money } from "../../../lib/money/money.ts";

test("a total paid in cash goes to the nearest five cents", () => {
  expect(cashTotal(money("4.92", "CAD")).amount.toString()).toBe("4.9");
  expect(cashTotal(money("4.93", "CAD")).amount.toString()).toBe("4.95");
});

test("the total is brought to the cent first", () => {
  expect(cashTotal(money("4.9249", "CAD")).amount.toString()).toBe("4.9");
  expect(cashTotal(money("4.925", "CAD")).amount.toString()).toBe("4.95");
});

test("a refund in cash is rounded as the payment was", () => {
  expect(cashTotal(money("-4.93", "CAD")).amount.toString()).toBe("-4.95");
});

test("a currency that keeps its smallest coin is handed over as it is", () => {
  expect(cashTotal(money("4.92", "USD")).amount.toString()).toBe("4.92");
});
