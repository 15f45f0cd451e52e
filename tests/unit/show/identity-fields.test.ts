import { expect, test } from "vitest";
import words from "../../../app/_words/en.json" with { type: "json" };
import { DIMENSION_NAMES } from "../../../lib/materials/material.ts";
import { IDENTITY_CHOICES, IDENTITY_NAMES, identityFields } from "../../../lib/show/identity-fields.ts";

test("a door is asked for its hand and its frame, a board for its grade and treatment", () => {
  expect(identityFields("doors", {})).toEqual(["doorKind", "hand"]);
  expect(identityFields("dimensional-lumber", {})).toEqual(["grade", "treatment"]);
  expect(identityFields("masonry", {})).toEqual([]);
});

test("what is known is asked for, whatever the category, so that no form drops it", () => {
  expect(identityFields("masonry", { grade: "Type S" })).toEqual(["grade"]);
});

test("everything that can be said of a material has words on screen", () => {
  const { form, identity } = words.materials;
  expect(Object.keys(form.identity).sort()).toEqual([...IDENTITY_NAMES].sort());
  expect(Object.keys(form.identityHints).sort()).toEqual([...IDENTITY_NAMES].sort());
  expect(Object.keys(form.size).sort()).toEqual([...DIMENSION_NAMES].sort());
  for (const [name, choices] of Object.entries(IDENTITY_CHOICES))
    expect(Object.keys(identity[name as keyof typeof identity]).sort()).toEqual([...choices].sort());
});
