import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addMaterial, archiveMaterial } from "../../lib/data/materials.ts";
import {
  addRequirement,
  closeRequirement,
  reopenRequirement,
  requirement,
  requirementsOf,
  reviseRequirement,
} from "../../lib/data/requirements.ts";
import { decimal } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { requirementPatch } from "../../lib/projects/requirement-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  ownerScope,
  someMaterialEntry,
  someRequirementEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const from = plusDays(today, -30);
let job: Awaited<ReturnType<typeof storedJob>>;
const some = (given: Readonly<Record<string, unknown>> = {}) =>
  someRequirementEntry(job.material.id, plusDays(today, 20), { validFrom: from, ...given });
const add = (given: Readonly<Record<string, unknown>> = {}) =>
  accepted(addRequirement(scope, job.project.id, v7(), some(given)));

beforeAll(async () => {
  job = await storedJob(scope);
});

test("a requirement comes back as entered", async () => {
  const other = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
  const id = v7();
  const entry = some({
    quantity: "53.25",
    wastePercent: "7.5",
    budgetUnitPrice: "41.123456",
    acceptsUsed: true,
    alternatives: [{ materialId: other.id, factor: "1.333333" }],
  });
  await accepted(addRequirement(scope, job.project.id, id, entry));
  expect(await requirement(scope, id)).toEqual({
    id,
    projectId: job.project.id,
    materialId: job.material.id,
    closedOn: null,
    alternatives: [{ materialId: other.id, factor: decimal("1.333333") }],
    revisions: [
      {
        validFrom: from,
        quantity: decimal("53.25"),
        unit: "sheet",
        wastePercent: decimal("7.5"),
        neededBy: plusDays(today, 20),
        budgetUnitPrice: money("41.123456", "CAD"),
        acceptsUsed: true,
      },
    ],
  });
});

test("the same create again is repeated; in another project, or with other content, a conflict", async () => {
  const id = v7();
  await accepted(addRequirement(scope, job.project.id, id, some()));
  expect(await addRequirement(scope, job.project.id, id, some())).toMatchObject({ ok: true, repeated: true });
  const other = await storedJob(scope);
  expect(await addRequirement(scope, other.project.id, id, some())).toMatchObject({ why: "conflict" });
  expect(await addRequirement(scope, job.project.id, id, some({ quantity: "21" }))).toMatchObject({
    why: "conflict",
  });
});

test("a revision adds to the earlier ones: what it does not name stays as it was on that day", async () => {
  const { id } = await add({ quantity: "10", budgetUnitPrice: "40" });
  const patch = requirementPatch.parse({ quantity: "14", validFrom: plusDays(today, -10) });
  await accepted(reviseRequirement(scope, id, patch));
  const between = requirementPatch.parse({ wastePercent: "5", validFrom: plusDays(today, -20) });
  const now = await accepted(reviseRequirement(scope, id, between));
  expect(
    now.revisions.map((one) => [
      one.validFrom,
      one.quantity.toFixed(),
      one.wastePercent.toFixed(),
      one.budgetUnitPrice?.amount.toFixed(),
    ]),
  ).toEqual([
    [from, "10", "0", "40"],
    [plusDays(today, -20), "10", "5", "40"],
    [plusDays(today, -10), "14", "0", "40"],
  ]);
});

test("a second revision of one day takes the first one's place", async () => {
  const { id } = await add();
  await accepted(reviseRequirement(scope, id, requirementPatch.parse({ quantity: "5" })));
  const now = await accepted(reviseRequirement(scope, id, requirementPatch.parse({ quantity: "6" })));
  expect(now.revisions.map(({ validFrom }) => validFrom)).toEqual([from, today]);
  expect(now.revisions[1]?.quantity.toFixed()).toBe("6");
});

test("revisions of one requirement at once are all kept", async () => {
  const { id } = await add();
  await Promise.all(
    [1, 2, 3, 4, 5].map((ago) =>
      reviseRequirement(
        scope,
        id,
        requirementPatch.parse({ quantity: `${ago}`, validFrom: plusDays(today, -ago) }),
      ),
    ),
  );
  expect((await requirement(scope, id))?.revisions).toHaveLength(6);
});

test("two revising different figures of one day at once: both count", async () => {
  for (let round = 0; round < 5; round += 1) {
    const { id } = await add();
    const patches = [
      { quantity: "7" },
      { wastePercent: "3" },
      { acceptsUsed: true },
      { budgetUnitPrice: "9" },
    ];
    await Promise.all(patches.map((patch) => reviseRequirement(scope, id, requirementPatch.parse(patch))));
    expect((await requirement(scope, id))?.revisions.at(-1)).toMatchObject({
      quantity: decimal("7"),
      wastePercent: decimal("3"),
      acceptsUsed: true,
      budgetUnitPrice: money("9", "CAD"),
    });
  }
});

test("closing is dated, once, and can be taken back", async () => {
  const { id } = await add();
  const on = plusDays(today, -2);
  expect(await accepted(closeRequirement(scope, id, on))).toMatchObject({ closedOn: on });
  expect(await closeRequirement(scope, id, on)).toMatchObject({ ok: true, repeated: true });
  expect(await faultsIn(closeRequirement(scope, id, today))).toEqual(["on: already-closed"]);
  expect(await accepted(reopenRequirement(scope, id))).toMatchObject({ closedOn: null });
});

test("every fault of a requirement is named", async () => {
  const wrong = some({
    unit: "pound",
    alternatives: [
      { materialId: v7(), factor: "1" },
      { materialId: job.material.id, factor: "1" },
    ],
  });
  expect(await faultsIn(addRequirement(scope, job.project.id, v7(), wrong))).toEqual([
    "unit: unit-not-convertible",
    "alternatives.0.materialId: not-there",
    "alternatives.1.materialId: wrong-material",
  ]);
  const gone = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
  await accepted(archiveMaterial(scope, gone.id));
  const archived = someRequirementEntry(gone.id, today);
  expect(await faultsIn(addRequirement(scope, job.project.id, v7(), archived))).toEqual([
    "materialId: archived",
  ]);
});

test("a project's requirements are listed in the order entered", async () => {
  const other = await storedJob(scope);
  const entry = someRequirementEntry(other.material.id, today);
  const second = await accepted(addRequirement(scope, other.project.id, v7(), entry));
  const third = await accepted(addRequirement(scope, other.project.id, v7(), entry));
  const listed = await requirementsOf(scope, other.project.id);
  expect(listed.map(({ id }) => id)).toEqual([other.requirement.id, second.id, third.id]);
});

test("what is not there is not there", async () => {
  expect(await addRequirement(scope, v7(), v7(), some())).toEqual({ ok: false, why: "not-there" });
  expect(await requirement(scope, v7())).toBeNull();
  expect(await reviseRequirement(scope, v7(), {})).toEqual({ ok: false, why: "not-there" });
  expect(await closeRequirement(scope, v7(), today)).toEqual({ ok: false, why: "not-there" });
});
