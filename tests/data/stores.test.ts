import { v7 } from "uuid";
import { expect, test } from "vitest";
import { addStore, archiveStore, changeStore, restoreStore, store, storesOf } from "../../lib/data/stores.ts";
import { decimal } from "../../lib/decimal.ts";
import { storePatch } from "../../lib/prices/store-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, ownerScope, someStoreEntry } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();

const FULL = {
  taxRegion: "US-ME",
  currency: "USD",
  tripCost: { amount: "96.00", currency: "CAD" },
  pricesIncludeTax: true,
  distanceKm: "310.5",
  discounts: [{ category: "sheet-goods", percent: "5", from: "2025-01-01", until: "2025-12-31" }],
  importCharges: [{ name: "Duty", percent: "3.5", perOrder: "12.00", recoverable: true, from: "2024-01-01" }],
};

test("a store comes back exactly as entered", async () => {
  const id = v7();
  const { saveTaxRegion } = await import("../../lib/data/tax-regions.ts");
  const { taxRegionEntry } = await import("../../lib/tax/tax-region-entry.ts");
  await saveTaxRegion(scope, taxRegionEntry.parse({ code: "US-ME", components: [] }));
  const entry = someStoreEntry(FULL);
  await accepted(addStore(scope, id, entry));
  expect(await store(scope, id)).toEqual({ ...entry, id, archivedOn: null });
});

test("the same create again is repeated, and changes nothing", async () => {
  const id = v7();
  const entry = someStoreEntry();
  expect(await addStore(scope, id, entry)).toMatchObject({ ok: true, repeated: false });
  expect(await addStore(scope, id, entry)).toMatchObject({ ok: true, repeated: true, value: { id } });
});

test("a create is compared with the entry as first received, whatever was changed since", async () => {
  const id = v7();
  const entry = someStoreEntry();
  await accepted(addStore(scope, id, entry));
  await accepted(changeStore(scope, id, storePatch.parse({ distanceKm: "5" })));
  expect(await addStore(scope, id, entry)).toMatchObject({ ok: true, repeated: true });
});

test("the same id with other content is a conflict that shows what is stored", async () => {
  const id = v7();
  const entry = someStoreEntry();
  await accepted(addStore(scope, id, entry));
  const other = await addStore(scope, id, { ...entry, currency: "USD" });
  expect(other).toMatchObject({ ok: false, why: "conflict", stored: { id, currency: "CAD" } });
});

test("two writers creating the same store at once make one", async () => {
  const id = v7();
  const entry = someStoreEntry();
  const answers = await Promise.all(Array.from({ length: 6 }, () => addStore(scope, id, entry)));
  expect(answers.filter((answer) => answer.ok && !answer.repeated)).toHaveLength(1);
  expect(answers.filter((answer) => answer.ok && answer.repeated)).toHaveLength(5);
});

test("two writers wanting one name at once: one gets it, the other is told", async () => {
  const entry = someStoreEntry();
  const answers = await Promise.all([v7(), v7(), v7()].map((id) => addStore(scope, id, entry)));
  expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  for (const answer of answers)
    if (!answer.ok) expect(answer).toMatchObject({ faults: [{ path: "name", code: "name-taken" }] });
});

test("every fault of a store is named", async () => {
  const taken = await accepted(addStore(scope, v7(), someStoreEntry()));
  const entry = someStoreEntry({ name: taken.name.toUpperCase(), taxRegion: "ZZ-99" });
  expect(await faultsIn(addStore(scope, v7(), entry))).toEqual([
    "name: name-taken",
    "taxRegion: unknown-region",
  ]);
});

test("a patch changes what it names and nothing else", async () => {
  const id = v7();
  const entry = someStoreEntry({ ...FULL, taxRegion: "CA-NS" });
  await accepted(addStore(scope, id, entry));
  const patch = storePatch.parse({ discounts: [], importCharges: null, tripCost: null });
  await accepted(changeStore(scope, id, patch));
  expect(await store(scope, id)).toEqual({
    ...entry,
    id,
    discounts: [],
    importCharges: null,
    tripCost: null,
    archivedOn: null,
  });
});

test("no import charges and none confirmed are two things", async () => {
  const none = await accepted(addStore(scope, v7(), someStoreEntry({ importCharges: [] })));
  const unknown = await accepted(addStore(scope, v7(), someStoreEntry({ importCharges: null })));
  expect(none.importCharges).toEqual([]);
  expect(unknown.importCharges).toBeNull();
});

test("an archived store leaves the list, keeps its figures, and can be restored", async () => {
  const made = await accepted(addStore(scope, v7(), someStoreEntry({ distanceKm: "3" })));
  await accepted(archiveStore(scope, made.id));
  expect((await storesOf(scope)).map(({ id }) => id)).not.toContain(made.id);
  expect((await storesOf(scope, { archived: true })).map(({ id }) => id)).toContain(made.id);
  expect((await store(scope, made.id))?.distanceKm).toEqual(decimal("3"));
  expect(await archiveStore(scope, made.id)).toMatchObject({ ok: true, repeated: true });
  expect(await accepted(restoreStore(scope, made.id))).toMatchObject({ archivedOn: null });
});

test("an archived store frees its name, and cannot come back while another has it", async () => {
  const made = await accepted(addStore(scope, v7(), someStoreEntry()));
  await accepted(archiveStore(scope, made.id));
  await accepted(addStore(scope, v7(), someStoreEntry({ name: made.name })));
  expect(await faultsIn(restoreStore(scope, made.id))).toEqual(["name: name-taken"]);
});

test("a store that is not there is not there", async () => {
  const id = v7();
  expect(await store(scope, id)).toBeNull();
  expect(await changeStore(scope, id, {})).toEqual({ ok: false, why: "not-there" });
  expect(await archiveStore(scope, id)).toEqual({ ok: false, why: "not-there" });
  expect(await restoreStore(scope, id)).toEqual({ ok: false, why: "not-there" });
});
