import { expect, test } from "vitest";
import type { DepositEvent } from "../../../lib/bills/deposit-events.ts";
import { decimal } from "../../../lib/decimal.ts";
import { depositsText } from "../../../lib/show/deposits-text.ts";
import { billOf, billTerms, deposit, HST, lineAt } from "../../support/bill-example.ts";
import { day } from "../../support/price-example.ts";

const lost: DepositEvent = {
  id: "lost",
  billId: "bill",
  deposit: 1,
  kind: "forfeited",
  amount: decimal("20"),
  on: day("2024-07-01"),
  note: null,
  sequence: 1,
};
const bill = billOf([lineAt("100")], {
  deposits: [deposit("10", { forfeited: true }), deposit("50", { name: "pallets", taxable: true })],
});
const text = (events: readonly DepositEvent[]) =>
  depositsText(bill, billTerms([HST]), { events, day: day("2024-07-02") }, "en-CA");

test("a deposit nothing became of is held with its tax, and the bill costs what it did", () => {
  expect(text([])).toEqual({
    deposits: [{ at: 1, name: "pallets", givenBack: null, forfeited: null, held: "56.50", left: "50" }],
    events: [],
    cost: null,
  });
});

// 113.00 and the 10.00 lost at once; 20.00 and 2.60 of tax since.
test("what was forfeited is in the cost by now, and what is left begins the next form", () => {
  expect(text([lost])).toMatchObject({
    deposits: [{ forfeited: "22.60", held: "33.90", left: "30" }],
    events: [{ id: "lost", name: "pallets", amount: "20.00" }],
    cost: "145.60",
  });
});

test("a bill without deposits that may come back has nothing to say of them", () => {
  const plain = billOf([lineAt("100")], { deposits: [deposit("10", { forfeited: true })] });
  expect(depositsText(plain, billTerms(), { events: [], day: day("2024-07-02") }, "en-CA")).toBeNull();
});
