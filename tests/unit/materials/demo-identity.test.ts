import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { substitutionRefusals } from "../../../lib/materials/substitution.ts";
import { demoEntries } from "../../../prisma/demo/entries.ts";

const { materials, requirements } = demoEntries(localDate("2026-06-30"));
const entries = materials.map(({ entry }) => entry);
const of = (category: string) => entries.filter((one) => one.category === category);
const named = (start: string) => {
  const found = entries.find(({ name }) => name.startsWith(start));
  if (found === undefined) throw new Error(`no ${start} in the demo`);
  return found;
};

test("every door of the demo is a slab or prehung; a prehung one says its hand and its jamb", () => {
  for (const { identity, dimensions } of of("doors")) {
    expect(identity.doorKind).toBeDefined();
    if (identity.doorKind === "prehung")
      expect([identity.hand, dimensions.jambDepth]).not.toContain(undefined);
  }
});

test("every panel of the demo has its thickness category", () => {
  expect(of("sheet-goods").filter(({ dimensions }) => dimensions.nominalThickness === undefined)).toEqual([]);
});

test("in the demo a thinner panel and a door of the other hand are refused", () => {
  const why = (asked: string, offered: string) =>
    substitutionRefusals(named(asked), named(offered)).map(({ code }) => code);
  expect(why("Spruce plywood 1/2", "Oriented strand board 7/16")).toEqual(["alternative-thinner"]);
  expect(why("Entry door 36 in, left", "Interior door 32")).toContain("alternative-wrong-hand");
});

test("what the demo accepts in place of another is not refused", () => {
  const byId = new Map(materials.map(({ id, entry }) => [id, entry]));
  const accepted = requirements.flatMap(({ entry }) =>
    entry.alternatives.map((other) => [byId.get(entry.materialId), byId.get(other.materialId)] as const),
  );
  expect(accepted.length).toBeGreaterThan(0);
  for (const [asked, offered] of accepted)
    expect(asked && offered && substitutionRefusals(asked, offered)).toEqual([]);
});
