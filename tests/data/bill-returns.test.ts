import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addBill, bill, redoBill, undoBill } from "../../lib/data/bills.ts";
import { addLot, deleteLot, lot } from "../../lib/data/lots.ts";
import { addStockEvent, eventsOf, undoStockEvent } from "../../lib/data/stock-events.ts";
import { addStore } from "../../lib/data/stores.ts";
import { updateWorkspace } from "../../lib/data/workspaces.ts";
import { lotState } from "../../lib/stock/lot-state.ts";
import { workspaceEntry } from "../../lib/tax/workspace-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someBillEntry,
  someEvent,
  someLotEntry,
  someStoreEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const boughtOn = plusDays(today, -4);
let job: Awaited<ReturnType<typeof storedJob>>;
let ontario: { id: string };
type Given = Parameters<typeof someBillEntry>[3];
const some = (given: Given = {}) => someBillEntry(job.material.id, ontario.id, today, { fees: [], ...given });
const made = (given: Given = {}) => accepted(addBill(scope, v7(), some(given)));
const line = (given: Given = {}) => ({
  materialId: job.material.id,
  quantity: "2",
  unit: "sheet",
  price: { amount: "20.00" },
  ...given,
});
const back = (given: Given = {}) => line({ returned: { percent: "15", ...given } });
/** Ten sheets at 20.00, bought four days ago on a receipt of their own. */
const bought = async () =>
  (await made({ on: boughtOn, lines: [line({ quantity: "10" })] })).lines[0]?.lotId ?? "";

beforeAll(async () => {
  job = await storedJob(scope);
  ontario = await accepted(addStore(scope, v7(), someStoreEntry({ taxRegion: "CA-ON" })));
});

// 2 x 20.00 less 15 % is 34.00, HST 4.42: 38.42.
test("goods handed back leave the lot they are of, for the refund with its tax, in the step that keeps the bill", async () => {
  const lotId = await bought();
  const returned = await made({ lines: [back({ lotId })] });
  const [event, ...others] = await eventsOf(scope, lotId);
  expect(others).toEqual([]);
  expect(event).toMatchObject({ id: returned.lines[0]?.stockEventId, kind: "returned", on: today });
  expect([event?.quantity.toFixed(), event?.amount?.amount.toFixed(2), event?.amount?.currency]).toEqual([
    "2",
    "38.42",
    "CAD",
  ]);
});

// The lot of a registered buyer costs 20.00 a sheet: 34.00 comes back for 40.00, the 4.42 is owed again.
test("tax that had come back is no part of the refund", async () => {
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ registeredFor: ["HST"] })));
  const lotId = await bought();
  await made({ lines: [back({ lotId })] });
  await accepted(updateWorkspace(scope, workspaceEntry.parse({ registeredFor: [] })));
  expect((await eventsOf(scope, lotId))[0]?.amount?.amount.toFixed(2)).toBe("34.00");
});

test("goods bought and handed back on one bill leave the lot it makes", async () => {
  const both = await made({ lines: [line({ quantity: "10" }), back({ ofThisBill: true })] });
  const own = both.lines[0]?.lotId ?? "";
  expect((await eventsOf(scope, own)).map(({ kind, quantity }) => [kind, quantity.toFixed()])).toEqual([
    ["returned", "2"],
  ]);
});

test("goods of no lot are kept as money only", async () => {
  expect((await made({ lines: [back()] })).lines[0]?.stockEventId).toBeNull();
});

test("undone with its bill, the goods are in the lot again, and leave it when the bill comes back", async () => {
  const lotId = await bought();
  const { id } = await made({ lines: [back({ lotId })] });
  const free = async () => {
    const stored = await lot(scope, lotId);
    return stored === null ? null : lotState(stored, await eventsOf(scope, lotId), today).free.toFixed();
  };
  expect(await free()).toBe("8");
  await accepted(undoBill(scope, id));
  expect(await free()).toBe("10");
  await accepted(redoBill(scope, id));
  expect(await free()).toBe("8");
});

test("an event undone by itself stays undone when its bill comes back", async () => {
  const lotId = await bought();
  const returned = await made({ lines: [back({ lotId })] });
  await accepted(undoStockEvent(scope, returned.lines[0]?.stockEventId ?? ""));
  await accepted(undoBill(scope, returned.id));
  await accepted(redoBill(scope, returned.id));
  expect(await eventsOf(scope, lotId)).toEqual([]);
});

test("a bill cannot come back when its goods are no longer there to hand back", async () => {
  const lotId = await bought();
  const { id } = await made({ lines: [back({ lotId })] });
  await accepted(undoBill(scope, id));
  await accepted(addStockEvent(scope, lotId, v7(), someEvent("drawn", "9", today)));
  expect(await faultsIn(redoBill(scope, id))).toEqual([": event-in-the-way"]);
  expect((await bill(scope, id))?.deletedAt).not.toBeNull();
});

test("what cannot have been handed back is refused at its line, and nothing is made", async () => {
  const lotId = await bought();
  const refused = (lines: readonly object[], given: Given = {}) =>
    faultsIn(addBill(scope, v7(), some({ lines, ...given })));
  const other = await storedJob(scope);
  const elsewhere = await accepted(addLot(scope, v7(), someLotEntry(other.material.id, boughtOn)));
  const gone = await accepted(addLot(scope, v7(), someLotEntry(job.material.id, boughtOn)));
  await accepted(deleteLot(scope, gone.id));
  const six = { ...back({ lotId }), quantity: "6" };
  expect(await refused([six, six])).toEqual(["lines.1.quantity: more-than-free"]);
  expect(await refused([back({ lotId })], { on: plusDays(boughtOn, -1) })).toEqual([
    "on: before-acquisition",
  ]);
  expect(await refused([back({ lotId: elsewhere.id })])).toEqual(["lines.0.returned.lotId: wrong-material"]);
  expect(await refused([back({ lotId: gone.id })])).toEqual(["lines.0.returned.lotId: not-there"]);
  expect(await refused([back({ ofThisBill: true })])).toEqual(["lines.0.returned.ofThisBill: missing"]);
  expect(await eventsOf(scope, lotId)).toEqual([]);
});
