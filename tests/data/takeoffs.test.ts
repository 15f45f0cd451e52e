import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { changesOf } from "../../lib/data/changes.ts";
import { addMaterial } from "../../lib/data/materials.ts";
import { requirementsOf } from "../../lib/data/requirements.ts";
import {
  addTakeoff,
  reviseTakeoff,
  takeoff,
  takeoffOfRequirement,
  undoTakeoff,
} from "../../lib/data/takeoffs.ts";
import { takeoffNeedsEntry } from "../../lib/projects/takeoff-needs.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  otherScope,
  ownerScope,
  someMaterialEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
let job: Awaited<ReturnType<typeof storedJob>>;
let sheet: string;
let stud: string;

beforeAll(async () => {
  job = await storedJob(scope);
  const face = { dimensions: { faceWidth: "48 in", faceLength: "96 in" } };
  sheet = (await accepted(addMaterial(scope, v7(), someMaterialEntry(face)))).id;
  const piece = { category: "dimensional-lumber", purchaseUnit: "piece", dimensions: { length: "8 ft" } };
  stud = (await accepted(addMaterial(scope, v7(), someMaterialEntry(piece)))).id;
});

// 32 ft x 8 ft: 256 sq ft, 8 sheets of 32; studs ceil(384 / 16) + 1 = 25, each 96 - 3 x 1.5 = 91.5 in: one from a piece.
const WALL = { length: "32 ft", height: "8 ft" };
function wallInputs(length = WALL.length) {
  return {
    walls: [{ ...WALL, length }],
    studSpacing: "16 in",
    studsPerOpening: "0",
    plateRows: "3",
    plateThickness: "1 1/2",
    drywallFaces: "1",
  };
}

type Needs = readonly Readonly<{
  line: string;
  materialId: string | null;
  wastePercent?: string;
  holds?: string;
  id?: string;
}>[];
function entryOf(needs: Needs, inputs: object = wallInputs()) {
  return takeoffNeedsEntry.parse({
    takeoff: { calculator: "walls", system: "imperial", inputs },
    neededBy: today,
    needs: needs.map((need) => ({ id: v7(), ...need })),
  });
}
const both = () => [
  { line: "wallSheathing", materialId: sheet, wastePercent: "10" },
  { line: "studs", materialId: stud },
];

async function needsOf(takeoffId: string) {
  const found = await takeoff(scope, takeoffId);
  const ids = new Map(found?.needs.map(({ line, requirementId }) => [requirementId, line]));
  return (await requirementsOf(scope, job.project.id))
    .filter(({ id }) => ids.has(id))
    .map(({ id, revisions, closedOn }) => {
      const { quantity, unit, wastePercent } = revisions.at(-1) ?? {};
      return `${ids.get(id)}: ${quantity} ${unit} + ${wastePercent} %${closedOn === null ? "" : " closed"}`;
    });
}

test("a takeoff becomes requirements in purchase units before waste, and comes back with its inputs", async () => {
  const id = v7();
  const made = await accepted(addTakeoff(scope, job.project.id, id, entryOf(both())));
  expect(made).toMatchObject({ id, projectId: job.project.id, calculator: "walls", system: "imperial" });
  expect(made.inputs).toMatchObject({ studSpacing: "16", walls: [{ length: "384", height: "96" }] });
  expect(await needsOf(id)).toEqual(["wallSheathing: 8 sheet + 10 %", "studs: 25 piece + 0 %"]);
  const [first] = made.needs;
  expect((await takeoffOfRequirement(scope, first?.requirementId ?? ""))?.id).toBe(id);
  expect(await takeoffOfRequirement(scope, job.requirement.id)).toBe(null);
});

test("sent twice, a takeoff is made once", async () => {
  const id = v7();
  const entry = entryOf(both());
  await accepted(addTakeoff(scope, job.project.id, id, entry));
  expect(await addTakeoff(scope, job.project.id, id, entry)).toMatchObject({ ok: true, repeated: true });
  expect(await needsOf(id)).toHaveLength(2);
  expect(await addTakeoff(scope, job.project.id, id, entryOf(both()))).toMatchObject({ why: "conflict" });
});

test("a refused takeoff leaves nothing behind, whichever of its lines is wrong", async () => {
  const before = (await requirementsOf(scope, job.project.id)).length;
  const id = v7();
  const given = (needs: Needs, inputs?: object) =>
    addTakeoff(scope, job.project.id, id, entryOf(needs, inputs));
  expect(await faultsIn(given([...both(), { line: "drywall", materialId: stud }]))).toEqual([
    "needs.2.materialId: unit-not-convertible",
  ]);
  expect(await faultsIn(given([{ line: "nothing", materialId: sheet }]))).toEqual([
    "needs.0.materialId: not-there",
  ]);
  expect(await faultsIn(given([{ line: "studs", materialId: null }]))).toEqual(["needs: missing"]);
  expect(await faultsIn(given(both(), { ...wallInputs(), studSpacing: "0" }))).toEqual([
    "inputs.studSpacing: not-positive",
  ]);
  expect(await takeoff(scope, id)).toBe(null);
  expect(await requirementsOf(scope, job.project.id)).toHaveLength(before);
});

test("reckoned again with other inputs, its requirements get a dated revision; what is left out is closed", async () => {
  const id = v7();
  await accepted(addTakeoff(scope, job.project.id, id, entryOf(both())));
  const changed = entryOf(
    [{ line: "wallSheathing", materialId: sheet, wastePercent: "5" }],
    wallInputs("40 ft"),
  );
  const made = await accepted(reviseTakeoff(scope, id, changed));
  expect(made.inputs).toMatchObject({ walls: [{ length: "480" }] });
  expect(await needsOf(id)).toEqual(["wallSheathing: 10 sheet + 5 %", "studs: 25 piece + 0 % closed"]);
  await accepted(reviseTakeoff(scope, id, entryOf([...both(), { line: "drywall", materialId: sheet }])));
  expect(await needsOf(id)).toEqual([
    "wallSheathing: 8 sheet + 10 %",
    "studs: 25 piece + 0 %",
    "drywall: 8 sheet + 0 %",
  ]);
  expect(
    await faultsIn(
      reviseTakeoff(scope, id, entryOf([{ line: "wallSheathing", materialId: job.material.id }])),
    ),
  ).toEqual(["needs.0.materialId: unit-not-convertible"]);
  expect(
    await faultsIn(
      reviseTakeoff(
        scope,
        id,
        entryOf([
          { line: "plates", materialId: stud },
          { line: "studs", materialId: sheet },
        ]),
      ),
    ),
  ).toEqual(["needs.1.materialId: unit-not-convertible"]);
});

test("a line bought as one material is not silently bought as another when it is reckoned again", async () => {
  const id = v7();
  await accepted(addTakeoff(scope, job.project.id, id, entryOf(both())));
  const face = { dimensions: { faceWidth: "48 in", faceLength: "120 in" } };
  const other = (await accepted(addMaterial(scope, v7(), someMaterialEntry(face)))).id;
  const changed = reviseTakeoff(scope, id, entryOf([{ line: "wallSheathing", materialId: other }]));
  expect(await faultsIn(changed)).toEqual(["needs.0.materialId: wrong-material"]);
});

// 10 ft x 9 ft x 4 in: 30 cubic feet; 30 / 0.6 = 50 bags, 30 / 0.75 = 40.
test("what was typed that a bag gives is kept with the takeoff, and changed with it", async () => {
  const entry = { category: "masonry", purchaseUnit: "bag", dimensions: {} };
  const bag = (await accepted(addMaterial(scope, v7(), someMaterialEntry(entry)))).id;
  const id = v7();
  const inputs = { length: "10 ft", width: "9 ft", thickness: "4 in" };
  const given = (holds: string) =>
    takeoffNeedsEntry.parse({
      takeoff: { calculator: "slab", system: "imperial", inputs },
      neededBy: today,
      needs: [{ line: "concrete", id: v7(), materialId: bag, holds }],
    });
  const made = await accepted(addTakeoff(scope, job.project.id, id, given("0.6 cu ft")));
  expect([...made.yields].map(([line, { value, unit }]) => `${line}: ${value} ${unit}`)).toEqual([
    "concrete: 0.6 cubic-foot",
  ]);
  expect(await needsOf(id)).toEqual(["concrete: 50 bag + 0 %"]);
  await accepted(reviseTakeoff(scope, id, given("3/4 cu ft")));
  expect((await takeoff(scope, id))?.yields.get("concrete")?.value.toFixed()).toBe("0.75");
  expect(await needsOf(id)).toEqual(["concrete: 40 bag + 0 %"]);
});

test("undone, everything made of a takeoff is closed, and opened again when that is taken back", async () => {
  const id = v7();
  await accepted(addTakeoff(scope, job.project.id, id, entryOf(both())));
  await accepted(undoTakeoff(scope, id, true));
  expect(await needsOf(id)).toEqual(["wallSheathing: 8 sheet + 10 % closed", "studs: 25 piece + 0 % closed"]);
  await accepted(undoTakeoff(scope, id, false));
  expect(await needsOf(id)).toEqual(["wallSheathing: 8 sheet + 10 %", "studs: 25 piece + 0 %"]);
});

test("another workspace sees no takeoff, and cannot add to, change or undo one", async () => {
  const theirs = await otherScope();
  const id = v7();
  const made = await accepted(addTakeoff(scope, job.project.id, id, entryOf(both())));
  expect(await takeoff(theirs, id)).toBe(null);
  expect(await takeoffOfRequirement(theirs, made.needs[0]?.requirementId ?? "")).toBe(null);
  expect(await addTakeoff(theirs, job.project.id, v7(), entryOf(both()))).toEqual({
    ok: false,
    why: "not-there",
  });
  expect(await reviseTakeoff(theirs, id, entryOf(both()))).toEqual({ ok: false, why: "not-there" });
  expect(await undoTakeoff(theirs, id, true)).toEqual({ ok: false, why: "not-there" });
});

test("what a takeoff was and became stands in the change log", async () => {
  const id = v7();
  await accepted(addTakeoff(scope, job.project.id, id, entryOf(both())));
  await accepted(reviseTakeoff(scope, id, entryOf(both(), wallInputs("40 ft"))));
  const { items } = await changesOf(scope, { of: id });
  const own = items.filter(({ noun }) => noun === "takeoff");
  expect(own.map(({ action }) => action)).toEqual(["changed", "created"]);
  expect(own[0]?.before).toMatchObject({ inputs: { walls: [{ length: "384" }] } });
  expect(items.filter(({ noun }) => noun === "requirement")).toHaveLength(2);
});
