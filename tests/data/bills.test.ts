import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addBill, bill } from "../../lib/data/bills.ts";
import { valuationOf } from "../../lib/data/facts.ts";
import { lot, lotsOf } from "../../lib/data/lots.ts";
import { addMaterial } from "../../lib/data/materials.ts";
import { observation } from "../../lib/data/observations.ts";
import { addStore } from "../../lib/data/stores.ts";
import { updateWorkspace } from "../../lib/data/workspaces.ts";
import { roundHalfUp } from "../../lib/decimal.ts";
import { allInPrice } from "../../lib/prices/all-in-price.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { workspaceEntry } from "../../lib/tax/workspace-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  ownerScope,
  someBillEntry,
  someMaterialEntry,
  someStoreEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const boughtOn = plusDays(today, -4);
let job: Awaited<ReturnType<typeof storedJob>>;
let quebec: { id: string };
let screws: { id: string };
type Given = Parameters<typeof someBillEntry>[3];
const some = (given: Given = {}) => someBillEntry(job.material.id, quebec.id, boughtOn, given);
const made = (given: Given = {}) => accepted(addBill(scope, v7(), some(given)));
const line = (given: Given = {}) => ({
  materialId: job.material.id,
  quantity: "10",
  unit: "sheet",
  price: { amount: "30.00" },
  ...given,
});

beforeAll(async () => {
  job = await storedJob(scope);
  quebec = await accepted(addStore(scope, v7(), someStoreEntry({ taxRegion: "CA-QC" })));
  const box = { category: "fasteners", purchaseUnit: "box", dimensions: { weight: "5 lb" } };
  screws = await accepted(addMaterial(scope, v7(), someMaterialEntry(box)));
});

/** What a lot cost in home currency, to the cent. */
async function costOf(lotId: string | null | undefined): Promise<string> {
  const stored = lotId ? await lot(scope, lotId) : null;
  if (!stored) return "no lot";
  const cost = lotCost(stored, job.material, await valuationOf(scope), today);
  return cost.known ? roundHalfUp(cost.cost.amount, 2).toFixed(2) : cost.reason;
}

test("a bill comes back exactly as entered", async () => {
  const id = v7();
  const entry = some({
    taxRegion: "CA-NB",
    taxRounding: "per-line-together",
    shareBy: "count",
    paidInCash: true,
    lines: [
      line({
        price: { amount: "20.00", per: { quantity: "3", unit: "sheet" } },
        discount: { percent: "12.5" },
        exemptFrom: ["HST"],
        fees: [{ name: "Levy", amount: "0.25", taxable: false }],
      }),
      {
        text: "Cutting",
        quantity: "0.5",
        unit: "each",
        price: { amount: "12.345678" },
        discount: { amount: "1" },
      },
      line({ quantity: "2", returned: { percent: "15", taxable: false } }),
    ],
    fees: [{ name: "Assessment", percent: "1", taxable: true }],
    deposits: [{ name: "Pallet", amount: "25", taxable: true }],
    rebates: [{ name: "By mail", amount: "10" }],
    printedTotal: "99.99",
    receivedOn: plusDays(boughtOn, 1),
    storedAt: "Shed",
    note: "copy in the binder",
  });
  await accepted(addBill(scope, id, entry));
  const stored = await bill(scope, id);
  expect(stored).toEqual({
    ...entry,
    id,
    deletedAt: null,
    terms: expect.anything(),
    deposited: [],
    lines: entry.lines.map((one, at) => ({
      ...one,
      observationId: stored?.lines[at]?.observationId ?? null,
      lotId: stored?.lines[at]?.lotId ?? null,
      stockEventId: null,
    })),
  });
  expect(stored?.lines.map(({ observationId, lotId }) => [observationId !== null, lotId !== null])).toEqual([
    [true, true],
    [false, false],
    [false, false],
  ]);
});

test("a receipt makes prices that were paid and lots, in one step", async () => {
  const receipt = await made({
    lines: [line({ discount: { percent: "10" } }), { ...line({ materialId: screws.id }), unit: "box" }],
    storedAt: "Shed",
  });
  const [panels, boxes] = receipt.lines;
  expect(await observation(scope, panels?.observationId ?? "")).toMatchObject({
    terms: "paid",
    seenOn: boughtOn,
    storeId: quebec.id,
    until: null,
    fees: [],
  });
  const seen = await observation(scope, panels?.observationId ?? "");
  expect([seen?.amount?.amount.toFixed(2), seen?.per.quantity.toFixed()]).toEqual(["270.00", "10"]);
  expect(await lot(scope, boxes?.lotId ?? "")).toMatchObject({
    materialId: screws.id,
    origin: "bought",
    storeId: quebec.id,
    storedAt: "Shed",
    orderedOn: boughtOn,
    observationId: boxes?.observationId,
    receipts: [{ on: boughtOn }],
  });
});

// 570.00 + 20.00 = 590.00; GST 29.50, QST 58.8525 -> 58.85; 678.35. Delivery by value 9.47 and 10.53, each tax by itself.
test("the lots of a receipt cost, together, its total to the cent", async () => {
  const receipt = await made({
    taxRounding: "per-bill",
    lines: [line({ discount: { percent: "10" } }), { ...line({ materialId: screws.id }), unit: "box" }],
  });
  const costs = await Promise.all(receipt.lines.map(({ lotId }) => costOf(lotId)));
  expect(costs).toEqual(["321.31", "357.04"]);
});

test("what comes back of the tax is no cost of the lots", async () => {
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ registeredFor: ["GST", "QST"] })));
  const back = await made({ taxRounding: "per-line-together" });
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ registeredFor: [] })));
  const kept = await made({ taxRounding: "per-bill" });
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ registeredFor: ["GST", "QST"] })));
  expect(await costOf(back.lines[0]?.lotId)).toBe("320.00");
  expect(await costOf(kept.lines[0]?.lotId)).toBe("320.00");
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ registeredFor: [] })));
  expect(await costOf(kept.lines[0]?.lotId)).toBe("367.92");
});

test("what the card was charged at home is shared over the lots", async () => {
  const abroad = await accepted(
    addStore(scope, v7(), someStoreEntry({ taxRegion: "CA-QC", currency: "USD" })),
  );
  const entry = some({
    currency: "USD",
    paidHome: "500.00",
    fees: [],
    lines: [line(), line({ price: { amount: "10" } }), line({ price: { amount: "10" } })],
  });
  const receipt = await accepted(addBill(scope, v7(), { ...entry, storeId: abroad.id }));
  const homes = await Promise.all(
    receipt.lines.map(async ({ lotId }) => (await lot(scope, lotId ?? ""))?.paidHome?.amount.toFixed(2)),
  );
  expect(homes).toEqual(["300.00", "100.00", "100.00"]);
});

test("a quote makes offers until its last day, for the quantity quoted, and no stock", async () => {
  const until = plusDays(today, 10);
  const before = (await lotsOf(scope)).length;
  const quote = await made({ kind: "quote", until });
  const seen = await observation(scope, quote.lines[0]?.observationId ?? "");
  expect(seen).toMatchObject({ terms: "quote", until });
  expect(seen?.minQuantity?.toFixed()).toBe("10");
  expect((await lotsOf(scope)).length).toBe(before);
  if (seen === null) throw new Error("the quote made no price");
  const price = allInPrice(seen, job.material, await valuationOf(scope), today);
  expect(price.known && price.orderCharges.map(({ name }) => name)).toEqual(["Delivery"]);
});

test("a line may be kept as neither price nor stock", async () => {
  const receipt = await made({ lines: [line({ keepPrice: false, keepLot: false })] });
  expect(receipt.lines[0]).toMatchObject({ observationId: null, lotId: null });
});

test("the same create again is repeated and makes nothing twice; other content is a conflict", async () => {
  const id = v7();
  await accepted(addBill(scope, id, some()));
  const lots = (await lotsOf(scope)).length;
  expect(await addBill(scope, id, some())).toMatchObject({ ok: true, repeated: true });
  expect(await addBill(scope, id, some({ note: "other" }))).toMatchObject({ why: "conflict" });
  expect((await lotsOf(scope)).length).toBe(lots);
});
