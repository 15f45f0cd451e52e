import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { inWorkspace } from "../../lib/data/client.ts";
import {
  addDisposal,
  correctDisposal,
  disposal,
  disposalsOf,
  redoDisposal,
  undoDisposal,
} from "../../lib/data/disposals.ts";
import { disposalEntry } from "../../lib/projects/disposal-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, otherScope, ownerScope, storedJob } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
let job: Awaited<ReturnType<typeof storedJob>>;

beforeAll(async () => {
  job = await storedJob(scope);
});

const waste = (given: object = {}) =>
  disposalEntry.parse({
    kind: "drywall",
    on: today,
    feeBasis: "tonne",
    fee: "125",
    least: "20",
    hauling: "30",
    currency: "CAD",
    taxRegion: "CA-NS",
    weight: { value: "680", unit: "kilogram" },
    ...given,
  });
const add = (given: object = {}) => accepted(addDisposal(scope, job.project.id, v7(), waste(given)));

test("waste is kept with its project exactly as entered, the newest first", async () => {
  const first = await add({ on: plusDays(today, -2) });
  const load = {
    feeBasis: "load",
    least: null,
    loads: "2",
    materialId: job.material.id,
    quantity: "12",
    weight: null,
  };
  const second = await add({ ...load, note: "gate 3" });
  expect(second).toMatchObject({
    kind: "drywall",
    feeBasis: "load",
    weight: null,
    note: "gate 3",
    undoneAt: null,
  });
  expect([second.loads?.toFixed(), second.quantity?.toFixed()]).toEqual(["2", "12"]);
  expect(first).toMatchObject({ taxRegion: "CA-NS", taxIncluded: false, weight: { unit: "kilogram" } });
  expect((await disposalsOf(scope, job.project.id)).map(({ id }) => id)).toEqual([second.id, first.id]);
});

test("corrected, undone and redone, it stays readable what was", async () => {
  const { id } = await add();
  const after = await accepted(correctDisposal(scope, id, waste({ fee: "140", kind: "mixed", least: null })));
  expect([after.fee.toFixed(), after.kind, after.least]).toEqual(["140", "mixed", null]);
  await accepted(undoDisposal(scope, id));
  expect((await disposalsOf(scope, job.project.id)).some((one) => one.id === id)).toBe(false);
  expect((await disposalsOf(scope, job.project.id, { undone: true })).some((one) => one.id === id)).toBe(
    true,
  );
  expect(await correctDisposal(scope, id, waste())).toMatchObject({ why: "not-there" });
  expect(await undoDisposal(scope, id)).toMatchObject({ repeated: true });
  await accepted(redoDisposal(scope, id));
  expect((await disposal(scope, id))?.undoneAt).toBeNull();
  const { items } = await changesOf(scope, { of: id });
  expect(items.map(({ action, before }) => `${action} ${before?.fee ?? ""}`)).toEqual([
    "redone 140",
    "undone 140",
    "changed 125",
    "created ",
  ]);
});

test("a day to come, a region and a material that are not there are refused together", async () => {
  const odd = waste({ on: plusDays(today, 2), taxRegion: "XX-99", materialId: v7(), quantity: "1" });
  const refused = ["on: day-ahead", "taxRegion: unknown-region", "materialId: not-there"];
  expect(await faultsIn(addDisposal(scope, job.project.id, v7(), odd))).toEqual(refused);
  const { id } = await add();
  expect(await faultsIn(correctDisposal(scope, id, odd))).toEqual(refused);
  expect(await addDisposal(scope, v7(), v7(), waste())).toMatchObject({ why: "not-there" });
});

test("the same sent again is paid for once; nothing of it is another workspace's", async () => {
  const id = v7();
  await accepted(addDisposal(scope, job.project.id, id, waste()));
  expect(await addDisposal(scope, job.project.id, id, waste())).toMatchObject({ ok: true, repeated: true });
  expect(await addDisposal(scope, job.project.id, id, waste({ fee: "9" }))).toMatchObject({
    why: "conflict",
  });
  const other = await otherScope();
  expect(await disposal(other, id)).toBeNull();
  expect(await undoDisposal(other, id)).toMatchObject({ why: "not-there" });
  expect(await addDisposal(other, job.project.id, v7(), waste())).toMatchObject({ why: "not-there" });
});

test("the database itself refuses what the entry would never send", async () => {
  const { id } = await add();
  const set = (column: string) =>
    inWorkspace(scope, (tx) => tx.$executeRawUnsafe(`UPDATE disposal SET ${column} WHERE id = '${id}'`));
  for (const odd of ["kind = 'soup'", "fee = -1", "loads = 2", "weight_unit = 'stone'", "quantity = 3"])
    await expect(set(odd)).rejects.toThrow(/disposal_/);
});
