import { expect, test } from "vitest";
import { a, amounts, rows } from "../../support/saving-example.ts";
import { cad, eventOf, lotOf, SEVEN_PERCENT } from "../../support/stock-example.ts";

const rent = eventOf("stored", 0, "2026-01-10", { amount: cad("12.00") });
const allocated = eventOf("allocated", 6, "2026-01-06", a);
const drawn = eventOf("drawn", 4, "2026-02-25", a);

test("money for storing is carrying of what was used and of what is held, shared by the units on hand", () => {
  const [used, held] = rows([allocated, rent, drawn], lotOf(10, 200), { moneyRates: SEVEN_PERCENT });
  // 4 x 20.00 x 7 % x 51 / 365 = 0.78, and 12.00 x 4 / 10; 2 held until 2 March: 2 x 20.00 x 7 % x 56 / 365 = 0.43, and 2.40.
  expect([amounts(used, "carrying"), amounts(held, "carrying")]).toEqual([["5.58"], ["2.83"]]);
  expect(used?.beforeCarrying).toBe(false);
  // 26.00 x 4 - 80.00 - 5.58.
  expect(amounts(used, "saving")).toEqual(["18.42"]);
});

test("without a money rate it stands alone, still before the carrying of money", () => {
  const [used] = rows([allocated, rent, drawn]);
  expect([amounts(used, "carrying"), used?.beforeCarrying]).toEqual([["4.80"], true]);
});

test("without a money rate and without storage money there is no carrying", () => {
  const [used] = rows([allocated, drawn]);
  expect([amounts(used, "carrying"), used?.beforeCarrying]).toEqual([[null], true]);
});

test("what is sold or written off bears its part", () => {
  const sold = eventOf("sold", 5, "2026-02-25", { amount: cad("90.00") });
  const [row] = rows([rent, sold]);
  // 90.00 - 100.00 - 6.00.
  expect(amounts(row, "carrying", "saving")).toEqual(["6.00", "-16.00"]);
});

test("in another currency without a rate, carrying is not known", () => {
  const foreign = eventOf("stored", 0, "2026-01-10", { amount: { ...cad("12.00"), currency: "USD" } });
  const [used] = rows([allocated, foreign, drawn], lotOf(10, 200), { moneyRates: SEVEN_PERCENT });
  expect([amounts(used, "carrying"), used?.beforeCarrying]).toEqual([[null], true]);
});
