import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Fee } from "../../../lib/prices/observation.ts";
import { receiptDue } from "../../../lib/stock/receipt-due.ts";
import { day, fee, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { lotOf, paid } from "../../support/stock-example.ts";

const halifax = valuation({ stores: [store("near", { taxRegion: "CA-NS" })] });
function gross(amount: string, fees: readonly Fee[], taxIncluded = false): string {
  const due = receiptDue(lotOf(10, 0, { paid: paid(amount, { fees, taxIncluded }) }), SHEET, halifax, TODAY);
  return typeof due === "string" ? due : due.gross.toFixed();
}

describe("what a receipt comes to", () => {
  test("has a fee per unit once for each unit", () => {
    expect(gross("200", [fee("cut", { amount: decimal("0.50") })])).toBe("233");
  });

  test("has a fee per order once", () => {
    expect(gross("200", [fee("delivery", { amount: decimal(20), basis: "order" })])).toBe("248");
  });

  test("has tax on a fee that bears it", () => {
    expect(gross("200", [fee("delivery", { amount: decimal(20), basis: "order", taxable: true })])).toBe(
      "250.8",
    );
  });

  test("has a fee of so many per cent of the price before tax", () => {
    expect(gross("200", [fee("levy", { percent: decimal(2) })])).toBe("232");
    expect(gross("228", [fee("levy", { percent: decimal(2) })], true)).toBe("232");
  });

  test("has no delivery from the amount it is free at", () => {
    const delivery = fee("delivery", { amount: decimal(20), basis: "order", freeFrom: decimal(200) });
    expect([gross("200", [delivery]), gross("199.99", [delivery])]).toEqual(["228", "247.9886"]);
  });

  test("keeps a tax-inclusive amount to its last digit", () => {
    expect(gross("0.03", [], true)).toBe("0.03");
  });

  test("of nothing paid is nothing, whatever the tax", () => {
    expect(receiptDue(lotOf(1, 0), SHEET, halifax, day("2009-12-31"))).toMatchObject({ gross: decimal(0) });
  });

  test("is not known where the tax of the day is not", () => {
    expect(receiptDue(lotOf(1, 5), SHEET, halifax, day("2009-12-31"))).toBe("tax-unknown");
  });
});
