import { v7 } from "uuid";
import { expect, test } from "vitest";
import { type LocalDate, localDate } from "../../lib/calendar/local-date.ts";
import { inWorkspace } from "../../lib/data/client.ts";
import { indexValues, takeIndexValues, valuesFated } from "../../lib/data/index-values.ts";
import { addMaterial } from "../../lib/data/materials.ts";
import {
  addReferenceIndex,
  indexOfMaterial,
  materialsOfIndex,
  nameIndexOfMaterial,
  referenceIndices,
} from "../../lib/data/reference-indices.ts";
import { setFileUndone } from "../../lib/data/taken-files.ts";
import { indexFile } from "../../lib/indices/index-file.ts";
import { valuesAsOf } from "../../lib/indices/index-value.ts";
import { referenceIndexEntry } from "../../lib/indices/reference-index-entry.ts";
import { copyAsCsv, LABOUR_BUREAU } from "../fixtures/index-files.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  newName,
  otherScope,
  ownerScope,
  someMaterialEntry,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const entry = (series: string) =>
  referenceIndexEntry.parse({
    name: "Lumber",
    series,
    publisher: "US Bureau of Labor Statistics",
    base: "1982 = 100",
  });
const someIndex = () => accepted(addReferenceIndex(scope, v7(), entry(newName("series"))));
const file = (text: string, publishedOn: string) => ({
  name: "index.csv",
  source: "US Bureau of Labor Statistics",
  publishedOn: localDate(publishedOn),
  readings: indexFile(text, { series: null }).readings,
});
const FIRST = file(copyAsCsv("first"), "2023-11-20");
const SECOND = file(copyAsCsv("second"), "2023-12-17");
const JULY = localDate("2023-07-01");
async function julyOn(indexId: string, day: LocalDate | string): Promise<string | undefined> {
  const known = valuesAsOf(await indexValues(scope, indexId), localDate(day));
  return known.find(({ month }) => month === JULY)?.value.toFixed();
}

test("a later publication stands beside the earlier one, and each day knows what had been published by it", async () => {
  const { id } = await someIndex();
  expect((await takeIndexValues(scope, v7(), id, FIRST)).added).toBe(5);
  expect((await takeIndexValues(scope, v7(), id, SECOND)).added).toBe(5);
  expect(await julyOn(id, "2023-12-16")).toBe("263.497");
  expect(await julyOn(id, scope.today)).toBe("272.345");
  expect((await indexValues(scope, id)).filter(({ month }) => month === JULY)).toHaveLength(2);
});

test("the same file again adds nothing, published on the same day or later", async () => {
  const { id } = await someIndex();
  await takeIndexValues(scope, v7(), id, SECOND);
  expect((await takeIndexValues(scope, v7(), id, SECOND)).added).toBe(0);
  expect((await takeIndexValues(scope, v7(), id, { ...SECOND, publishedOn: scope.today })).added).toBe(0);
});

test("a preview writes nothing", async () => {
  const { id } = await someIndex();
  expect((await valuesFated(scope, id, FIRST)).filter(({ fate }) => fate === "new")).toHaveLength(5);
  expect(await indexValues(scope, id)).toEqual([]);
});

test("a file is taken back as one, and can be taken in again on the same day", async () => {
  const { id } = await someIndex();
  const first = v7();
  await takeIndexValues(scope, v7(), id, FIRST);
  await takeIndexValues(scope, first, id, SECOND);
  await setFileUndone(scope, first, true);
  expect(await julyOn(id, scope.today)).toBe("263.497");
  expect((await takeIndexValues(scope, v7(), id, SECOND)).added).toBe(5);
  expect(await julyOn(id, scope.today)).toBe("272.345");
});

test("a published value is never rewritten, past the program too", async () => {
  const { id } = await someIndex();
  await takeIndexValues(scope, v7(), id, FIRST);
  const rewritten = inWorkspace(scope, (tx) => tx.$executeRaw`UPDATE index_value SET value = 1`);
  await expect(rewritten).rejects.toThrow(/never rewritten/);
});

test("preliminary is kept", async () => {
  const { id } = await someIndex();
  await takeIndexValues(scope, v7(), id, file(LABOUR_BUREAU, "2023-12-17"));
  expect((await indexValues(scope, id)).map(({ month, preliminary }) => [month, preliminary])).toEqual([
    ["2023-06-01", false],
    ["2023-11-01", true],
  ]);
});

test("one series of one publisher is there once", async () => {
  const { series } = await someIndex();
  expect(await faultsIn(addReferenceIndex(scope, v7(), entry(series)))).toEqual(["series: name-taken"]);
});

test("a material names its index, another one, or none", async () => {
  const index = await someIndex();
  await takeIndexValues(scope, v7(), index.id, FIRST);
  const material = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
  expect(await indexOfMaterial(scope, material.id)).toBeNull();
  await accepted(nameIndexOfMaterial(scope, material.id, index.id));
  expect(await indexOfMaterial(scope, material.id)).toMatchObject({ index: { id: index.id } });
  expect(await materialsOfIndex(scope, index.id)).toEqual([{ id: material.id, name: material.name }]);
  await accepted(nameIndexOfMaterial(scope, material.id, null));
  expect(await indexOfMaterial(scope, material.id)).toBeNull();
  expect(await faultsIn(nameIndexOfMaterial(scope, material.id, v7()))).toEqual(["indexId: not-there"]);
});

test("another workspace sees no index and no value", async () => {
  const { id } = await someIndex();
  await takeIndexValues(scope, v7(), id, FIRST);
  const other = await otherScope();
  expect(await referenceIndices(other)).toEqual([]);
  expect(await indexValues(other, id)).toEqual([]);
});
