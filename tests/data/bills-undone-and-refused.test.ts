import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addBill, bill, bills, redoBill, taxRoundings, undoBill } from "../../lib/data/bills.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { inWorkspace } from "../../lib/data/client.ts";
import { deleteLot, lot, lotsOf } from "../../lib/data/lots.ts";
import { addMaterial, archiveMaterial } from "../../lib/data/materials.ts";
import { observation, observationsOf } from "../../lib/data/observations.ts";
import { addStore } from "../../lib/data/stores.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  otherScope,
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
});

test("undone, a bill takes its prices and lots with it, and brings them back; one deleted by itself stays deleted", async () => {
  const receipt = await made({ lines: [line(), line()] });
  const [kept, gone] = receipt.lines.map(({ lotId }) => lotId ?? "");
  await accepted(deleteLot(scope, gone ?? ""));
  const state = async () => [
    (await bill(scope, receipt.id))?.deletedAt === null,
    (await lot(scope, kept ?? ""))?.deletedAt === null,
    (await lot(scope, gone ?? ""))?.deletedAt === null,
    (await observation(scope, receipt.lines[0]?.observationId ?? ""))?.deletedAt === null,
  ];
  expect(await state()).toEqual([true, true, false, true]);
  await accepted(undoBill(scope, receipt.id));
  expect(await state()).toEqual([false, false, false, false]);
  expect(await undoBill(scope, receipt.id)).toMatchObject({ ok: true, repeated: true });
  await accepted(redoBill(scope, receipt.id));
  expect(await state()).toEqual([true, true, false, true]);
});

test("an undone bill is not in the list; the newest day comes first, a page at a time", async () => {
  const old = await made();
  const gone = await made();
  await accepted(undoBill(scope, gone.id));
  const first = await bills(scope, { limit: 1 });
  expect(first.items).toHaveLength(1);
  const all = await bills(scope);
  const ids = all.items.map(({ id }) => id);
  expect(ids).toContain(old.id);
  expect(ids).not.toContain(gone.id);
  const second = await bills(scope, { limit: 1, cursor: first.next });
  expect([first.items[0]?.id, second.items[0]?.id]).toEqual(ids.slice(0, 2));
});

test("how a store rounds its taxes is remembered from its last bill, not from an undone one", async () => {
  const place = await accepted(addStore(scope, v7(), someStoreEntry({ taxRegion: "CA-QC" })));
  const at = (given: Given = {}) => addBill(scope, v7(), { ...some(given), storeId: place.id });
  expect((await accepted(at())).taxRounding).toBe("per-bill");
  await accepted(at({ taxRounding: "per-line" }));
  expect((await accepted(at())).taxRounding).toBe("per-line");
  const other = await accepted(at({ taxRounding: "per-bill-together" }));
  expect((await taxRoundings(scope)).get(place.id)).toBe("per-bill-together");
  await accepted(undoBill(scope, other.id));
  expect((await taxRoundings(scope)).get(place.id)).toBe("per-line");
  expect((await accepted(at())).taxRounding).toBe("per-line");
});

test("a refused bill names everything wrong with it and leaves nothing behind", async () => {
  const before = (await observationsOf(scope, job.material.id)).items.length;
  const lots = (await lotsOf(scope)).length;
  const archived = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
  await accepted(archiveMaterial(scope, archived.id));
  const entry = some({
    storeId: v7(),
    shareBy: "weight",
    lines: [line(), line({ materialId: archived.id }), line({ materialId: v7() }), line({ unit: "bag" })],
  });
  expect(await faultsIn(addBill(scope, v7(), { ...entry, on: plusDays(today, 5) }))).toEqual([
    "storeId: not-there",
    "lines.1.materialId: archived",
    "lines.2.materialId: not-there",
    "on: day-ahead",
    "lines.0.materialId: weight-unknown",
    "lines.1.materialId: weight-unknown",
    "lines.3.unit: unit-not-convertible",
    "lines.3.materialId: weight-unknown",
  ]);
  expect((await observationsOf(scope, job.material.id)).items.length).toBe(before);
  expect((await lotsOf(scope)).length).toBe(lots);
});

test("a region nobody knows, or whose tax of that day nobody knows, is refused", async () => {
  expect(await faultsIn(addBill(scope, v7(), some({ taxRegion: "CA-ZZ" })))).toEqual([
    "taxRegion: unknown-region",
  ]);
  const early = { ...some(), on: "1990-02-01" as typeof today, receivedOn: null };
  expect(await faultsIn(addBill(scope, v7(), early))).toEqual(["taxRegion: tax-unknown"]);
});

test("a currency unlike the store's is refused", async () => {
  expect(await faultsIn(addBill(scope, v7(), some({ currency: "USD" })))).toEqual([
    "currency: currency-not-the-stores",
  ]);
});

test("another workspace sees no bill, and cannot undo one", async () => {
  const receipt = await made();
  const theirs = await otherScope();
  expect(await bill(theirs, receipt.id)).toBeNull();
  expect((await bills(theirs)).items).toEqual([]);
  expect(await undoBill(theirs, receipt.id)).toEqual({ ok: false, why: "not-there" });
});

test("every step of a bill is in the change log", async () => {
  const receipt = await made();
  await accepted(undoBill(scope, receipt.id));
  await accepted(redoBill(scope, receipt.id));
  const { items } = await changesOf(scope, { of: receipt.id });
  const of = (noun: string) => items.filter((change) => change.noun === noun).map(({ action }) => action);
  expect(of("bill").reverse()).toEqual(["created", "deleted", "undeleted"]);
  expect(of("bill_line")).toEqual(["created"]);
});

test("the database refuses to rewrite what a bill says", async () => {
  const receipt = await made();
  const change = inWorkspace(scope, (tx) =>
    tx.bill.updateMany({ where: { id: receipt.id }, data: { note: "other" } }),
  );
  await expect(change).rejects.toThrow(/denied|permission/i);
});
