import { expect, test } from "vitest";
import { rowsTyped, typed, typedAll, typedAmount, typedOrNull } from "../../../app/_forms/typed.ts";

function form(values: Readonly<Record<string, string | readonly string[]>>): FormData {
  const data = new FormData();
  for (const [name, value] of Object.entries(values))
    for (const one of [value].flat()) data.append(name, one);
  return data;
}

test("text is taken without the blanks around it, and blanks alone are nothing", () => {
  expect(typed(form({ name: "  Mill Road Yard " }), "name")).toBe("Mill Road Yard");
  expect(typed(form({ name: "   " }), "name")).toBeUndefined();
  expect(typedOrNull(form({}), "name")).toBeNull();
});

test("an amount is read in the language, and what cannot be read stays as typed for the entry to refuse", () => {
  const amount = (text: string, locale = "en-CA") => typedAmount(form({ amount: text }), "amount", locale);
  expect(amount("1,049")).toBe("1049");
  expect(amount("1,049", "fr-CA")).toBe("1.049");
  expect(amount("42,97")).toBe("42.97");
  expect(["1.2.3", "-5", "1e30"].map((text) => amount(text))).toEqual(["1.2.3", "-5", "1e30"]);
});

test("check boxes send what is ticked, in order", () => {
  expect(typedAll(form({ exemptFrom: ["GST", "", "PST"] }), "exemptFrom")).toEqual(["GST", "PST"]);
});

test("rows of a group are found by their numbers, in order, each once", () => {
  const data = form({
    "fees.2.name": "Delivery",
    "fees.0.name": "Deposit",
    "fees.0.amount": "1",
    "fee.9.name": "no",
  });
  expect(rowsTyped(data, "fees")).toEqual([0, 2]);
});
