import { describe, expect, test } from "vitest";
import { billEntry } from "../../../lib/bills/bill-entry.ts";
import { billFaults } from "../../../lib/bills/bill-faults.ts";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOf } from "../../../lib/fault.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { billedFee, billOf, handedBack, lineAt, priceFor } from "../../support/bill-example.ts";
import { someMaterial } from "../../support/some-material.ts";

const ID = "00000000-0000-4000-8000-000000000001";
const LINE = { materialId: ID, quantity: "4", unit: "sheet", price: { amount: "41.98" } };
const BILL = { storeId: ID, on: "2026-03-02", currency: "CAD", lines: [LINE] };

function faults(given: object): string[] {
  const parsed = billEntry.safeParse({ ...BILL, ...given });
  return parsed.success ? [] : faultsOf(parsed.error).map(({ path, code }) => `${path} ${code}`);
}

describe("an entry", () => {
  test("with the least that must be said is a receipt, received on its day, priced per one of its unit", () => {
    const bill = billEntry.parse(BILL);
    expect(bill).toMatchObject({
      kind: "receipt",
      receivedOn: "2026-03-02",
      taxRounding: null,
      shareBy: "value",
    });
    expect(bill.lines[0]).toMatchObject({
      keepPrice: true,
      keepLot: true,
      price: { per: { unit: "sheet" } },
    });
    expect(bill.lines[0]?.price.per.quantity.toFixed()).toBe("1");
  });

  test("of a quote makes prices and no stock, and must say its last day", () => {
    expect(faults({ kind: "quote" })).toEqual(["until until-required"]);
    const quote = billEntry.parse({ ...BILL, kind: "quote", until: "2026-03-16" });
    expect(quote.lines[0]).toMatchObject({ keepPrice: true, keepLot: false });
  });

  test("of something in words makes neither price nor stock", () => {
    const { materialId: _, ...rest } = LINE;
    const bill = billEntry.parse({ ...BILL, lines: [{ ...rest, text: "cutting charge" }] });
    expect(bill.lines[0]).toMatchObject({ keepPrice: false, keepLot: false });
    expect(faults({ lines: [rest] })).toEqual(["lines.0.materialId missing"]);
  });

  test("is refused with every fault, none hidden by the first", () => {
    expect(
      faults({
        lines: [
          { ...LINE, price: { amount: "0" } },
          { ...LINE, quantity: "" },
        ],
        fees: [{ name: "delivery", taxable: true }],
        until: "2026-03-01",
        deposits: [{ name: "pallet", amount: "-25" }],
      }),
    ).toEqual([
      "lines.0.price.amount not-positive",
      "lines.1.quantity not-a-number",
      "fees.0.amount missing",
      "deposits.0.amount not-positive",
      "until days-reversed",
    ]);
  });

  test("without lines, or with a discount said twice, is refused", () => {
    expect(faults({ lines: [] })).toEqual(["lines missing"]);
    expect(faults({ lines: [{ ...LINE, discount: { amount: "1", percent: "5" } }] })).toEqual([
      "lines.0.discount.amount amount-not-expected",
    ]);
  });
});

describe("a bill that could be read", () => {
  const sheet = someMaterial("sheet", {}, { id: "sheet" });
  const found = (bill: ReturnType<typeof billOf>, ...materials: readonly Material[]) =>
    billFaults(bill, new Map(materials.map((one) => [one.id, one]))).map(
      ({ path, code }) => `${path} ${code}`,
    );

  test("names the unit a material cannot be read in", () => {
    const line = lineAt(0, 2, {
      materialId: "sheet",
      unit: "sheet",
      price: priceFor("1.20", 1, "square-foot"),
    });
    expect(found(billOf([line]), sheet)).toEqual(["lines.0.price.per.unit unit-not-convertible"]);
    expect(found(billOf([lineAt(1, 64, { materialId: "sheet", unit: "square-foot" })]), sheet)).toEqual([
      "lines.0.unit unit-not-convertible",
    ]);
    expect(found(billOf([lineAt(0, 2, { price: priceFor("1.20", 1, "bag") })]))).toEqual([
      "lines.0.price.per.unit unit-not-convertible",
    ]);
  });

  test("names the material whose weight delivery cannot be shared by", () => {
    const bill = billOf([lineAt(10, 2, { materialId: "sheet", unit: "sheet" })], {
      shareBy: "weight",
      fees: [billedFee("delivery", { amount: decimal(5) })],
    });
    expect(found(bill, sheet)).toEqual(["lines.0.materialId weight-unknown"]);
  });

  test("names a discount above its line, and a restocking fee above what was handed back", () => {
    const off = lineAt(10, 1, { discount: { amount: decimal(11), percent: null } });
    const back = lineAt(10, 1, { returned: handedBack({ amount: decimal(11) }) });
    expect(found(billOf([off, back]))).toEqual([
      "lines.0.discount.amount too-large",
      "lines.1.returned.amount too-large",
    ]);
  });

  test("names a lot that would be bought for nothing", () => {
    const free = lineAt(10, 1, {
      materialId: "sheet",
      unit: "sheet",
      keepLot: true,
      discount: { percent: decimal(100), amount: null },
    });
    expect(found(billOf([free]), sheet)).toEqual(["lines.0.keepLot free-only-for-salvage"]);
  });
});
