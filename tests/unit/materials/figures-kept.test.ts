import { expect, test } from "vitest";
import { sourcesKept } from "../../../lib/materials/figures-kept.ts";
import { dimensions } from "../../support/some-material.ts";

const before = { dimensions: dimensions({ weight: "48 lb", length: "8 ft" }), shelfLifeDays: 90 };
const sources = { weight: "rule of the trade", length: "its name", shelfLifeDays: "the bag" };

test("a figure left alone keeps its source", () => {
  expect(sourcesKept(sources, before, before)).toEqual(sources);
  const again = { ...before, dimensions: dimensions({ weight: "48.0 lb", length: "8 ft" }) };
  expect(sourcesKept(sources, before, again)).toEqual(sources);
});

test("a figure put in by hand was not read where the one before it was", () => {
  const after = { dimensions: dimensions({ weight: "45 lb", length: "96 in" }), shelfLifeDays: 120 };
  expect(sourcesKept(sources, before, after)).toEqual({});
});

test("the source goes with the figure", () => {
  expect(sourcesKept(sources, before, { dimensions: {}, shelfLifeDays: null })).toEqual({});
});
