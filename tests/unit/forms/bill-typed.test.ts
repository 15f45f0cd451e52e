import { expect, test } from "vitest";
import { lineRows, rowPath, typedBill } from "../../../app/bills/bill-typed.ts";

function sent(fields: Readonly<Record<string, string>>): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  return form;
}
const TWO = {
  "lines.0.unit": "each",
  "lines.0.price.per.quantity": "1",
  "lines.1.text": "Cutting",
  "lines.1.quantity": "2",
  "lines.1.unit": "each",
  "lines.1.price.amount": "2,50",
  "lines.1.price.per.quantity": "",
};

test("a line in which nothing was filled is not sent on", () => {
  expect(lineRows(sent(TWO))).toEqual([1]);
  expect(typedBill(sent(TWO), "en-CA").lines).toMatchObject([
    { text: "Cutting", quantity: "2", unit: "each", price: { amount: "2.50", per: { quantity: "1" } } },
  ]);
});

test("a fault is found at its row, whatever rows before it were left empty", () => {
  expect(rowPath("lines.0.price.amount", sent(TWO))).toBe("lines.1.price.amount");
  expect(rowPath("fees.0.amount", sent({ "fees.1.name": "Delivery" }))).toBe("fees.1.amount");
  expect(rowPath("lines", sent({}))).toBe("lines.0.quantity");
  expect(rowPath("lines.0.keepLot", sent(TWO))).toBe("lines.1.keep");
  expect(rowPath("storeId", sent({}))).toBe("storeId");
});

test("a quote keeps no stock and is not received", () => {
  const keep = { ...TWO, kind: "quote", "lines.1.keep": "lot", until: "2026-04-01" };
  const quote = typedBill(sent(keep), "en-CA");
  expect(quote).toMatchObject({ until: "2026-04-01", receivedOn: null });
  expect(quote.lines).toMatchObject([{ keepLot: false }]);
});

test("the last day of what is no quote is not sent on", () => {
  expect(typedBill(sent({ kind: "receipt", until: "2026-04-01" }), "en-CA").until).toBeNull();
});

test("a discount is an amount or a percent, none when neither is typed", () => {
  expect(typedBill(sent(TWO), "en-CA").lines).toMatchObject([{ discount: null }]);
  const off = typedBill(sent({ ...TWO, "lines.1.discount.percent": "10" }), "en-CA");
  expect(off.lines).toMatchObject([{ discount: { percent: "10", amount: null } }]);
});

test("a fee is an amount or a percent, on the whole and on a line", () => {
  const fees = {
    "fees.0.name": "Delivery",
    "fees.0.amount": "85",
    "fees.0.taxable": "yes",
    "fees.1.name": "Assessment",
    "fees.1.percent": "1",
    "lines.1.fees.0.name": "Levy",
    "lines.1.fees.0.amount": "0,25",
  };
  const bill = typedBill(sent({ ...TWO, ...fees }), "en-CA");
  expect(bill.fees).toEqual([
    { name: "Delivery", amount: "85", percent: null, taxable: true },
    { name: "Assessment", amount: null, percent: "1", taxable: false },
  ]);
  expect(bill.lines).toMatchObject([{ fees: [{ name: "Levy", amount: "0.25", taxable: false }] }]);
  expect(rowPath("lines.0.fees.0.amount", sent({ ...TWO, ...fees }))).toBe("lines.1.fees.0.amount");
});

test("goods handed back say the fee kept, its tax and the lot they leave", () => {
  const back = { ...TWO, "lines.1.handedBack": "yes", "lines.1.returned.lotId": "this" };
  const plain = { percent: "0", amount: null, taxable: true, lotId: null, ofThisBill: true };
  expect(typedBill(sent(back), "en-CA").lines).toMatchObject([{ returned: plain }]);
  const fee = {
    ...back,
    "lines.1.returned.amount": "6",
    "lines.1.returned.untaxed": "yes",
    "lines.1.returned.lotId": "a lot",
  };
  expect(typedBill(sent(fee), "en-CA").lines).toMatchObject([
    { returned: { percent: null, amount: "6", taxable: false, lotId: "a lot", ofThisBill: false } },
  ]);
  expect(rowPath("lines.0.returned.ofThisBill", sent(back))).toBe("lines.1.returned.lotId");
});
