import { expect, test } from "vitest";
import { type AskingPrice, askingOn, salesBeside } from "../../../lib/stock/asking-price.ts";
import { day } from "../../support/price-example.ts";
import { cad, eventOf } from "../../support/stock-example.ts";

const asked = (sequence: number, since: string, amount: string | null): AskingPrice => ({
  id: `asked ${sequence}`,
  lotId: "lot",
  amount: amount === null ? null : cad(amount),
  since: day(since),
  note: null,
  sequence,
});
const PRICES = [asked(1, "2026-01-10", "9"), asked(2, "2026-01-20", "7.505"), asked(3, "2026-02-01", null)];
const on = (text: string) => askingOn(PRICES, "lot", day(text))?.amount?.amount.toFixed() ?? "not for sale";

test("the newest asking price on or before a day counts, until it is no longer for sale", () => {
  expect(["2026-01-09", "2026-01-10", "2026-01-25", "2026-02-01"].map(on)).toEqual([
    "not for sale",
    "9",
    "7.505",
    "not for sale",
  ]);
});

test("of two of one day the one recorded later counts, whatever the order they come in", () => {
  const twice = [asked(2, "2026-01-10", "8"), asked(1, "2026-01-10", "9")];
  expect(askingOn(twice, "lot", day("2026-01-10"))?.amount?.amount.toFixed()).toBe("8");
  expect(askingOn(twice, "another", day("2026-01-10"))).toBeNull();
});

test("what was sold stands beside what was asked for so many on that day", () => {
  const sale = (text: string, amount: string) => eventOf("sold", "3", text, { amount: cad(amount) });
  const sales = salesBeside(PRICES, "lot", [sale("2026-01-22", "20"), sale("2026-02-02", "5")]);
  expect(sales.map((one) => [one.asked?.amount.toFixed(), one.difference?.amount.toFixed()])).toEqual([
    ["22.52", "-2.52"], // 3 x 7.505 = 22.515
    [undefined, undefined],
  ]);
});
