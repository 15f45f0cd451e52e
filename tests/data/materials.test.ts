import { v7 } from "uuid";
import { expect, test } from "vitest";
import {
  addMaterial,
  archiveMaterial,
  changeMaterial,
  material,
  materialsOf,
  restoreMaterial,
} from "../../lib/data/materials.ts";
import { addObservation } from "../../lib/data/observations.ts";
import { materialPatch } from "../../lib/materials/material-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someMaterialEntry,
  someObservationEntry,
  storedJob,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();

test("a material comes back exactly as entered, sizes to the last digit", async () => {
  const id = v7();
  const entry = someMaterialEntry({
    dimensions: { faceWidth: "48.000001 in", faceLength: "8 ft", coverage: "33.333333 sq ft" },
    recheckDays: 14,
    exemptFrom: ["PST"],
    note: "tongue and groove",
  });
  await accepted(addMaterial(scope, id, entry));
  expect(await material(scope, id)).toEqual({ ...entry, id, archivedOn: null });
});

test("the same create again is repeated; other content is a conflict", async () => {
  const id = v7();
  const entry = someMaterialEntry();
  await accepted(addMaterial(scope, id, entry));
  expect(await addMaterial(scope, id, entry)).toMatchObject({ ok: true, repeated: true });
  const other = await addMaterial(scope, id, { ...entry, recheckDays: 3 });
  expect(other).toMatchObject({ ok: false, why: "conflict", stored: { recheckDays: null } });
});

test("a name is taken once among live materials, capitals aside", async () => {
  const made = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
  const again = someMaterialEntry({ name: made.name.toLowerCase() });
  expect(await faultsIn(addMaterial(scope, v7(), again))).toEqual(["name: name-taken"]);
  await accepted(archiveMaterial(scope, made.id));
  await accepted(addMaterial(scope, v7(), again));
  expect(await faultsIn(restoreMaterial(scope, made.id))).toEqual(["name: name-taken"]);
});

test("the purchase unit can be put right until a price or a lot counts in it", async () => {
  const job = await storedJob(scope);
  const asPiece = materialPatch.parse({ purchaseUnit: "piece" });
  const asSheet = materialPatch.parse({ purchaseUnit: "sheet" });
  expect(await accepted(changeMaterial(scope, job.material.id, asPiece))).toMatchObject({
    purchaseUnit: "piece",
  });
  await accepted(changeMaterial(scope, job.material.id, asSheet));
  const seen = someObservationEntry(job.material.id, job.store.id, scope.today);
  await accepted(addObservation(scope, v7(), seen));
  expect(await faultsIn(changeMaterial(scope, job.material.id, asPiece))).toEqual([
    "purchaseUnit: already-in-use",
  ]);
  const stock = await storedStock(scope, scope.today);
  expect(await faultsIn(changeMaterial(scope, stock.material.id, asPiece))).toEqual([
    "purchaseUnit: already-in-use",
  ]);
});

test("a patch replaces the sizes as a whole and leaves the rest", async () => {
  const entry = someMaterialEntry({ dimensions: { length: "8 ft" }, note: "straight" });
  const made = await accepted(addMaterial(scope, v7(), entry));
  const patch = materialPatch.parse({ dimensions: { faceWidth: "4 ft" } });
  const changed = await accepted(changeMaterial(scope, made.id, patch));
  expect(Object.keys(changed.dimensions)).toEqual(["faceWidth"]);
  expect(changed.note).toBe("straight");
});

test("an archived material leaves the list and keeps its history", async () => {
  const job = await storedJob(scope);
  const seen = someObservationEntry(job.material.id, job.store.id, scope.today);
  const { id } = await accepted(addObservation(scope, v7(), seen));
  await accepted(archiveMaterial(scope, job.material.id));
  expect((await materialsOf(scope)).map((one) => one.id)).not.toContain(job.material.id);
  expect((await materialsOf(scope, { archived: true })).map((one) => one.id)).toContain(job.material.id);
  const { observationsOf } = await import("../../lib/data/observations.ts");
  expect((await observationsOf(scope, job.material.id)).items.map((one) => one.id)).toEqual([id]);
  expect(await faultsIn(addObservation(scope, v7(), seen))).toEqual(["materialId: archived"]);
  expect(await accepted(restoreMaterial(scope, job.material.id))).toMatchObject({ archivedOn: null });
});

test("a material that is not there is not there", async () => {
  const id = v7();
  expect(await material(scope, id)).toBeNull();
  expect(await changeMaterial(scope, id, {})).toEqual({ ok: false, why: "not-there" });
  expect(await archiveMaterial(scope, id)).toEqual({ ok: false, why: "not-there" });
  expect(await restoreMaterial(scope, id)).toEqual({ ok: false, why: "not-there" });
});
