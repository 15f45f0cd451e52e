import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { valuationOf } from "../../lib/data/facts.ts";
import { addPayment, redoPayment, undoPayment } from "../../lib/data/lot-payments.ts";
import { addReceipt, redoReceipt, undoReceipt } from "../../lib/data/lot-receipts.ts";
import { lot as lotOf } from "../../lib/data/lots.ts";
import { addStockEvent } from "../../lib/data/stock-events.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { paymentEntry, receiptEntry } from "../../lib/stock/stock-act-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, ownerScope, someEvent, storedStock } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const ago = (days: number) => plusDays(today, -days);
const receipt = (quantity: string, days: number) => receiptEntry.parse({ quantity, on: ago(days) });
const payment = (amount: string, days: number) => paymentEntry.parse({ amount, on: ago(days) });

/** Ten sheets ordered thirty days ago for 300.00 and tax, 100.00 of it paid then, nothing here yet. */
const ordered = (given: Readonly<Record<string, unknown>> = {}) =>
  storedStock(scope, ago(30), {
    origin: "special-order",
    acquiredOn: null,
    payments: [{ amount: "100.00", on: ago(30) }],
    ...given,
  });

test("an order comes in in parts, and no more than was ordered", async () => {
  const { lot } = await ordered();
  const draw = (quantity: string, days: number) =>
    addStockEvent(scope, lot.id, v7(), someEvent("drawn", quantity, ago(days)));
  expect(await faultsIn(draw("1", 5))).toEqual(["quantity: not-received-yet"]);
  const id = v7();
  await accepted(addReceipt(scope, lot.id, id, receipt("4", 10)));
  expect(await addReceipt(scope, lot.id, id, receipt("4", 10))).toMatchObject({ ok: true, repeated: true });
  expect(await addReceipt(scope, lot.id, id, receipt("5", 10))).toMatchObject({ why: "conflict" });
  expect(await addReceipt(scope, lot.id, v7(), receipt("7", 8))).toMatchObject({
    faults: [{ path: "quantity", code: "more-than-ordered", values: { has: "6" } }],
  });
  expect(await faultsIn(addReceipt(scope, lot.id, v7(), receipt("1", 31)))).toEqual([
    "on: before-acquisition",
  ]);
  expect(await faultsIn(addReceipt(scope, lot.id, v7(), receipt("1", -2)))).toEqual(["on: day-ahead"]);
  await accepted(addReceipt(scope, lot.id, v7(), receipt("6", 8)));
  await accepted(draw("10", 5));
});

test("a receipt is undone until something was taken of it, and comes back", async () => {
  const { lot } = await ordered();
  const { id } = await accepted(addReceipt(scope, lot.id, v7(), receipt("4", 10)));
  await accepted(undoReceipt(scope, id));
  expect((await lotOf(scope, lot.id))?.receipts).toEqual([]);
  await accepted(redoReceipt(scope, id));
  const drawn = await accepted(addStockEvent(scope, lot.id, v7(), someEvent("drawn", "3", ago(5))));
  expect(await undoReceipt(scope, id)).toMatchObject({
    faults: [{ code: "event-in-the-way", values: { event: drawn.id } }],
  });
});

test("twenty receipts of one sheet at once bring in ten of ten", async () => {
  const { lot } = await ordered();
  const answers = await Promise.all(
    Array.from({ length: 20 }, () => addReceipt(scope, lot.id, v7(), receipt("1", 3))),
  );
  expect(answers.filter(({ ok }) => ok)).toHaveLength(10);
});

test("a balance is paid later; undone, it is owed again, and with no payment left all of it is", async () => {
  const { lot } = await ordered();
  const valuation = await valuationOf(scope);
  const { material } = await storedStock(scope, ago(30));
  const unpaid = async () => {
    const now = await lotOf(scope, lot.id);
    const cost = now === null ? null : lotCost(now, { ...material, id: now.materialId }, valuation, today);
    return cost?.known ? cost.unpaid.amount.toFixed() : null;
  };
  // 300.00 with the 14 % of Nova Scotia is 342.00 (Canada's table of dated rates).
  expect(await unpaid()).toBe("242");
  const { id } = await accepted(addPayment(scope, lot.id, v7(), payment("242.00", 4)));
  expect(await unpaid()).toBe("0");
  await accepted(undoPayment(scope, id));
  expect(await unpaid()).toBe("242");
  await accepted(redoPayment(scope, id));
  const [deposit] = (await lotOf(scope, lot.id))?.payments ?? [];
  await accepted(undoPayment(scope, id));
  await accepted(undoPayment(scope, deposit?.id ?? ""));
  expect(await unpaid()).toBe("342");
});

test("what was paid in full when ordered takes no payment, and none is made before the order", async () => {
  const { lot } = await storedStock(scope, ago(30));
  expect(await faultsIn(addPayment(scope, lot.id, v7(), payment("1", 4)))).toEqual(["amount: paid-in-full"]);
  const order = await ordered();
  expect(await faultsIn(addPayment(scope, order.lot.id, v7(), payment("1", 31)))).toEqual([
    "on: before-acquisition",
  ]);
  const nothing = await ordered({ payments: [{ amount: "0", on: ago(30) }] });
  await accepted(addPayment(scope, nothing.lot.id, v7(), payment("50", 4)));
});
