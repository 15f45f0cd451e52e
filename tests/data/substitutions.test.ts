import { v7 } from "uuid";
import { beforeAll, describe, expect, test } from "vitest";
import { inWorkspace } from "../../lib/data/client.ts";
import { entryHash, firstHash } from "../../lib/data/first-received.ts";
import { addMaterial, changeMaterial, material } from "../../lib/data/materials.ts";
import { addRequirement, reviseRequirement } from "../../lib/data/requirements.ts";
import { materialPatch } from "../../lib/materials/material-entry.ts";
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
let projectId: string;

beforeAll(async () => {
  projectId = (await storedJob(scope)).project.id;
});

function added(given: Readonly<Record<string, unknown>>) {
  return accepted(addMaterial(scope, v7(), someMaterialEntry(given)));
}
const SIZES = { width: "36 in", length: "80 in" };
function door(hand: string, jambDepth = "4.5625 in") {
  const dimensions = { ...SIZES, jambDepth };
  return added({
    category: "doors",
    purchaseUnit: "each",
    dimensions,
    identity: { hand, doorKind: "prehung" },
  });
}
function needs(materialId: string, ...alternatives: readonly string[]) {
  const entry = someRequirementEntry(materialId, scope.today, {
    unit: "each",
    alternatives: alternatives.map((id) => ({ materialId: id, factor: "1" })),
  });
  return addRequirement(scope, projectId, v7(), entry);
}

describe("what a requirement may accept instead", () => {
  test("is no door of the other hand and none of another jamb", async () => {
    const left = await door("left");
    const [right, deep, same] = [await door("right"), await door("left", "6.5625 in"), await door("left")];
    expect(await faultsIn(needs(left.id, right.id, deep.id, same.id))).toEqual([
      "alternatives.0.materialId: alternative-wrong-hand",
      "alternatives.1.materialId: alternative-wrong-jamb",
    ]);
    await accepted(needs(left.id, same.id));
  });

  test("is no door whose hand nobody noted, and the fault says what is missing", async () => {
    const left = await door("left");
    const bare = await added({ category: "doors", purchaseUnit: "each" });
    const refused = await needs(left.id, bare.id);
    expect(refused).toMatchObject({
      ok: false,
      faults: expect.arrayContaining([
        { path: "alternatives.0.materialId", code: "alternative-not-comparable", values: { by: "hand" } },
      ]),
    });
  });

  test("is no thinner panel, when it is named later either", async () => {
    const half = await added({ dimensions: { nominalThickness: "0.5 in" } });
    const thin = await added({ dimensions: { nominalThickness: "0.46875 in" } });
    const entry = someRequirementEntry(half.id, scope.today);
    const wanted = await accepted(addRequirement(scope, projectId, v7(), entry));
    const patch = requirementPatch.parse({ alternatives: [{ materialId: thin.id, factor: "1" }] });
    expect(await faultsIn(reviseRequirement(scope, wanted.id, patch))).toEqual([
      "alternatives.0.materialId: alternative-thinner",
    ]);
  });
});

describe("a door that stands in for another", () => {
  test("is not turned to the other hand under the requirement, nor is the one it stands in for", async () => {
    const [wanted, other] = [await door("left"), await door("left")];
    await accepted(needs(wanted.id, other.id));
    const turned = materialPatch.parse({ identity: { hand: "right", doorKind: "prehung" } });
    for (const { id } of [wanted, other])
      expect(await faultsIn(changeMaterial(scope, id, turned))).toEqual([
        "identity.hand: stands-in-elsewhere",
      ]);
    const deeper = materialPatch.parse({
      dimensions: { width: "36 in", length: "80 in", jambDepth: "6.5625 in" },
    });
    expect(await faultsIn(changeMaterial(scope, other.id, deeper))).toEqual([
      "dimensions.jambDepth: stands-in-elsewhere",
    ]);
    await accepted(changeMaterial(scope, other.id, materialPatch.parse({ note: "white" })));
  });

  test("accepted before hands were compared is left alone, until something else would no longer do", async () => {
    const [wanted, other] = [await door("left"), await door("right")];
    const { id: requirementId } = await accepted(needs(wanted.id));
    const data = { requirementId, materialId: other.id, factor: "1" };
    await inWorkspace(scope, (tx) =>
      tx.requirementAlternative.create({ data, select: { materialId: true } }),
    );
    await accepted(changeMaterial(scope, other.id, materialPatch.parse({ note: "white" })));
    const smaller = materialPatch.parse({ dimensions: { ...SIZES, width: "34 in", jambDepth: "4.5625 in" } });
    expect(await faultsIn(changeMaterial(scope, other.id, smaller))).toEqual([
      "dimensions.width: stands-in-elsewhere",
    ]);
  });

  test("nobody accepts may be turned", async () => {
    const { id } = await door("left");
    const turned = materialPatch.parse({ identity: { hand: "right" } });
    expect(await accepted(changeMaterial(scope, id, turned))).toMatchObject({ identity: { hand: "right" } });
  });
});

describe("what is kept of a material beside its sizes", () => {
  const given = {
    dimensions: { weight: "48 lb", length: "8 ft" },
    identity: { grade: "No. 2", treatment: "ground-contact" },
    shelfLifeDays: 90,
    sources: { weight: "rule of the trade (read)", shelfLifeDays: "the bag" },
  };

  test("comes back as it was entered", async () => {
    const made = await added(given);
    const { identity, shelfLifeDays, sources } = given;
    expect(await material(scope, made.id)).toMatchObject({ identity, shelfLifeDays, sources });
  });

  test("stays through a change of something else", async () => {
    const made = await added(given);
    const changed = await accepted(
      changeMaterial(scope, made.id, materialPatch.parse({ note: "in the shed" })),
    );
    expect(changed).toEqual({ ...made, note: "in the shed" });
  });

  test("a source goes with the figure it spoke of, unless another is given", async () => {
    const made = await added(given);
    const weighed = materialPatch.parse({ dimensions: { weight: "45 lb", length: "8 ft" } });
    expect((await accepted(changeMaterial(scope, made.id, weighed))).sources).toEqual({
      shelfLifeDays: "the bag",
    });
    const said = materialPatch.parse({ sources: { weight: "my own scales" } });
    expect((await accepted(changeMaterial(scope, made.id, said))).sources).toEqual({
      weight: "my own scales",
    });
  });

  test("saying nothing, an entry sent again is the entry of before these could be said", async () => {
    const id = v7();
    const entry = someMaterialEntry({ dimensions: { length: "8 ft" } });
    await accepted(addMaterial(scope, id, entry));
    const { identity: _, shelfLifeDays: __, sources: ___, ...before } = entry;
    const kept = await inWorkspace(scope, (tx) => firstHash(tx, "material", id));
    expect(kept).toBe(entryHash(before));
    const other = { ...entry, identity: { grade: "No. 1" } };
    expect(await addMaterial(scope, id, other)).toMatchObject({ ok: false, why: "conflict" });
  });
});
