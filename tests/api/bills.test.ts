import { describe, expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import { billShape, depositEventShape } from "../../lib/show/api-bill-shape.ts";
import { lotShape } from "../../lib/show/api-lot.ts";
import { ownInterface } from "../support/interface.ts";
import { somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();

/** Ten sheets at 3 for 20.00 less 10 %, a cutting charge and a delivery, in Quebec. */
async function receipt(more: object = {}) {
  const plywood = await somePlywood(api);
  const store = await someStore(api, { taxRegion: "CA-QC" });
  return {
    storeId: store.id,
    on: "2025-06-02",
    currency: "CAD",
    lines: [
      {
        materialId: plywood.id,
        quantity: "10",
        unit: "sheet",
        price: { amount: "20.00", per: { quantity: "3" } },
        discount: { percent: "10" },
      },
      { text: "Cutting", quantity: "2", unit: "each", price: { amount: "2.50" } },
    ],
    fees: [{ name: "Delivery", amount: "15.00", taxable: true }],
    printedTotal: "91.99",
    ...more,
  };
}

describe("a receipt", () => {
  // 60.00 + 5.00 + 15.00 = 80.00; GST 4.00, QST 7.98; 91.98 rounded per bill.
  test("answers what it comes to, and by how much it misses its printed total", async () => {
    const bill = await api.make(billShape, "/bills", await receipt());
    expect(bill.figures).toMatchObject({
      subtotal: "65.00",
      taxes: [
        { name: "GST", ratePercent: "5", amount: "4.00" },
        { name: "QST", ratePercent: "9.975", amount: "7.98" },
      ],
      total: "91.98",
      reconciliation: { state: "differs", difference: "0.01" },
    });
    const cost = bill.lines.reduce((sum, line) => sum.plus(line.cost ?? "0"), decimal(0));
    expect(cost.toFixed(2)).toBe("91.98");
  });

  test("makes a lot, and takes it back when it is undone", async () => {
    const bill = await api.make(billShape, "/bills", await receipt());
    const [line] = bill.lines;
    const lot = () => api.read(lotShape, `/lots/${line?.lotId}`);
    expect(await lot()).toMatchObject({
      quantity: "10",
      deletedAt: null,
      observationId: line?.observationId,
    });
    await api.change(billShape, "DELETE", `/bills/${bill.id}`);
    expect((await lot()).deletedAt).not.toBeNull();
    await api.change(billShape, "POST", `/bills/${bill.id}/restore`);
    expect((await lot()).deletedAt).toBeNull();
  });

  test("with faults is refused with all of them, and nothing is made", async () => {
    const wrong = await receipt({ storeId: "019d0000-0000-7000-8000-000000000000", taxRegion: "CA-ZZ" });
    const { faults } = await api.refused(422, "POST", "/bills", wrong);
    expect(faults).toEqual(["storeId: not-there", "taxRegion: unknown-region"]);
  });
});

describe("a deposit", () => {
  test("is cost from the day it is forfeited, and no cost again when that is undone", async () => {
    const deposits = [{ name: "Pallets", amount: "50.00", taxable: false }];
    const bill = await api.make(billShape, "/bills", await receipt({ deposits }));
    const path = `/bills/${bill.id}/deposit-events`;
    const figures = async () => {
      const read = await api.read(billShape, `/bills/${bill.id}`);
      return [read.figures?.givenBack, read.figures?.forfeited, read.figures?.held];
    };
    const lost = { deposit: 0, kind: "forfeited", amount: "20.00", on: "2025-07-01" };
    const event = await api.make(depositEventShape, path, lost);
    expect(await figures()).toEqual(["0.00", "20.00", "30.00"]);
    const { faults } = await api.refused(422, "POST", path, { ...lost, amount: "30.01" });
    expect(faults).toEqual(["amount: more-than-held"]);
    await api.change(depositEventShape, "DELETE", `${path}/${event.id}`);
    expect(await figures()).toEqual(["0.00", "0.00", "50.00"]);
    await api.change(depositEventShape, "POST", `${path}/${event.id}/restore`);
    expect(await figures()).toEqual(["0.00", "20.00", "30.00"]);
  });
});

describe("goods handed back", () => {
  // Ten at 3 for 20.00 are 66.67; two back at 13.33 less 15 % (2.00) are 11.33, GST 0.57 and QST 1.13: 13.03.
  test("leave the lot they are of, for what comes back of their price", async () => {
    const bought = await receipt();
    const bill = await api.make(billShape, "/bills", bought);
    const [sold] = bought.lines;
    const back = {
      ...sold,
      quantity: "2",
      discount: null,
      returned: { percent: "15", lotId: bill.lines[0]?.lotId },
    };
    const entry = { ...bought, lines: [back], fees: [], printedTotal: null };
    const returned = await api.make(billShape, "/bills", entry);
    expect(returned.figures?.total).toBe("-13.03");
    const lot = await api.read(lotShape, `/lots/${bill.lines[0]?.lotId}`);
    expect([lot.state.free, lot.state.returned]).toEqual(["8", "2"]);
    expect(returned.lines[0]).toMatchObject({ cost: "-13.03", lotId: null });
    expect(returned.lines[0]?.stockEventId).not.toBeNull();
  });
});
