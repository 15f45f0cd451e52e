import { expect, test } from "vitest";
import { apportion } from "../../../lib/bills/apportion.ts";
import { decimal } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import { cents } from "../../support/bill-example.ts";

const laid = (total: string, ...exact: string[]) => cents(apportion(money(total, "CAD"), exact.map(decimal)));

test("a rounded tax is laid back on the parts it was rounded from", () => {
  expect(laid("2.14", "0.715", "0.715", "0.7098")).toEqual(["0.72", "0.71", "0.71"]);
});

test("parts may be refunds beside charges", () => {
  expect(laid("0.02", "-4.996", "5.014")).toEqual(["-4.99", "5.01"]);
});

test("a total far from its parts is still met to the cent", () => {
  expect(laid("0.07", "0.01", "0.01")).toEqual(["0.04", "0.03"]);
  expect(laid("-0.01", "0.01", "0.012")).toEqual(["-0.01", "0.00"]);
});

test("a total laid on nothing is no parts", () => {
  expect(laid("1.00")).toEqual([]);
});
