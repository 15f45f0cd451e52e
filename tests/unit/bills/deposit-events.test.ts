import { describe, expect, test } from "vitest";
import type { Bill } from "../../../lib/bills/bill.ts";
import { type DepositEvent, depositEventFaults, depositsOn } from "../../../lib/bills/deposit-events.ts";
import { decimal } from "../../../lib/decimal.ts";
import { billOf, billTerms, cents, deposit, figuresOf, HST, lineAt } from "../../support/bill-example.ts";
import { day } from "../../support/price-example.ts";

const event = (
  kind: DepositEvent["kind"],
  amount: string,
  on: string,
  given: Partial<DepositEvent> = {},
): DepositEvent => ({
  id: `${kind} ${on}`,
  billId: "bill",
  deposit: 0,
  kind,
  amount: decimal(amount),
  on: day(on),
  note: null,
  sequence: 1,
  ...given,
});
/** What was given back, is forfeited, is held, and what the bill cost by a day. */
const on = (bill: Bill, events: readonly DepositEvent[], by: string) => {
  const { givenBack, forfeited, held, cost } = depositsOn(
    bill,
    figuresOf(bill, billTerms([HST])),
    events,
    day(by),
  );
  return cents([givenBack, forfeited, held, cost]);
};
const pallets = (given = {}) => billOf([lineAt("100")], { deposits: [deposit("50", given)] });

describe("a deposit", () => {
  test("is cost from the day it was forfeited, and none before", () => {
    const events = [event("forfeited", "50", "2024-07-01")];
    expect(on(pallets(), events, "2024-06-30")).toEqual(["0.00", "0.00", "50.00", "113.00"]);
    expect(on(pallets(), events, "2024-07-01")).toEqual(["0.00", "50.00", "0.00", "163.00"]);
  });

  test("given back is cash and no cost on any day", () => {
    const events = [event("given-back", "50", "2024-07-01")];
    expect(on(pallets(), events, "2024-07-01")).toEqual(["50.00", "0.00", "0.00", "113.00"]);
  });

  test("may be given back in part and forfeited in part", () => {
    const events = [event("given-back", "25", "2024-07-01"), event("forfeited", "25", "2024-07-02")];
    expect(on(pallets(), events, "2024-07-02")).toEqual(["25.00", "25.00", "0.00", "138.00"]);
  });

  test("takes its tax along, no cent lost between the parts", () => {
    // 10.00 and its 1.30 in three parts of 3.33, 3.33, 3.34.
    const bill = billOf([lineAt("100")], { deposits: [deposit("10", { taxable: true })] });
    const events = ["3.33", "3.33", "3.34"].map((amount, at) =>
      event(at === 1 ? "given-back" : "forfeited", amount, `2024-07-0${at + 1}`),
    );
    expect(on(bill, events, "2024-07-09")).toEqual(["3.77", "7.53", "0.00", "120.53"]);
  });

  test("with its tax in it is parted as it stands", () => {
    const bill = { ...pallets({ taxable: true }), taxIncluded: true };
    expect(on(bill, [event("forfeited", "20", "2024-07-01")], "2024-07-01")).toEqual([
      "0.00",
      "20.00",
      "30.00",
      "120.00",
    ]);
  });

  test("forfeited from the start is cost of the lines already", () => {
    expect(on(pallets({ forfeited: true }), [], "2024-06-03")).toEqual(["0.00", "0.00", "0.00", "163.00"]);
  });
});

describe("what becomes of a deposit is refused", () => {
  const codes = (bill: Bill, events: readonly DepositEvent[], one: DepositEvent) =>
    depositEventFaults(bill, events, one).map(({ path, code, values }) => `${path} ${code} ${values?.has}`);

  test("above what is held", () => {
    const before = [event("given-back", "30", "2024-07-01")];
    expect(codes(pallets(), before, event("forfeited", "20.01", "2024-06-20"))).toEqual([
      "amount more-than-held 20",
    ]);
    expect(codes(pallets(), before, event("forfeited", "20", "2024-06-20"))).toEqual([]);
  });

  test("before the bill's day, or of a deposit it has not", () => {
    expect(codes(pallets(), [], event("forfeited", "1", "2024-06-02"))).toEqual([
      "on days-reversed undefined",
    ]);
    expect(codes(pallets(), [], event("forfeited", "1", "2024-07-01", { deposit: 1 }))).toEqual([
      "deposit not-there undefined",
    ]);
    expect(codes(pallets({ forfeited: true }), [], event("forfeited", "1", "2024-07-01"))).toEqual([
      "deposit not-there undefined",
    ]);
  });
});
