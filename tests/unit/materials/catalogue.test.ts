import { describe, expect, test } from "vitest";
import { ONE } from "../../../lib/decimal.ts";
import { CATALOGUE, catalogued } from "../../../lib/materials/catalogue/catalogue.ts";
import { type CatalogueEntry, entryOf, startedFrom } from "../../../lib/materials/catalogue/entry.ts";
import { convertFor } from "../../../lib/materials/convert.ts";
import { CATEGORIES, type Category, type FigureName } from "../../../lib/materials/material.ts";
import { materialEntry } from "../../../lib/materials/material-entry.ts";
import { measuresOf } from "../../../lib/materials/measures.ts";
import type { UnitCode } from "../../../lib/measure/units.ts";
import { fromCatalogue, materialOf } from "../../support/catalogue-material.ts";

const of = (category: Category) => CATALOGUE.filter((entry) => entry.category === category);

test("more than a hundred and twenty materials, some of every category", () => {
  expect(CATALOGUE.length).toBeGreaterThanOrEqual(120);
  expect([...new Set(CATALOGUE.map(({ category }) => category))].sort()).toEqual([...CATEGORIES].sort());
});

test("every one is what the material form would take", () => {
  for (const entry of CATALOGUE) expect(entryOf(entry).name, entry.key).toBe(entry.name);
});

test("no two have one name or one key, and every key fits into an address", () => {
  const names = CATALOGUE.map(({ name }) => name.toLowerCase());
  const keys = CATALOGUE.map(({ key }) => key);
  expect(new Set(names).size).toBe(CATALOGUE.length);
  expect(new Set(keys).size).toBe(CATALOGUE.length);
  for (const key of keys) expect(key).toMatch(/^[a-z0-9-]+$/);
});

test("one is found by its key, and an old link by none", () => {
  expect(catalogued("ply-1-2")?.name).toBe("Softwood plywood 1/2 in, 4x8");
  expect(catalogued("ply-1-7")).toBeNull();
});

/** Figures no name says: each has to say where it was read, or that it was not. */
const READ: readonly FigureName[] = [
  "coverageWidth",
  "coverage",
  "coverageLength",
  "yield",
  "pieces",
  "perLift",
  "weight",
  "density",
  "thickness",
  "shelfLifeDays",
];

test("every figure says where it was read, and no source speaks of a figure that is not there", () => {
  for (const entry of CATALOGUE) {
    const { dimensions, shelfLifeDays, sources } = entryOf(entry);
    const figures = [...Object.keys(dimensions), ...(shelfLifeDays === null ? [] : ["shelfLifeDays"])];
    expect(figures, entry.key).toEqual(expect.arrayContaining(Object.keys(sources)));
    const silent = READ.filter((name) => figures.includes(name) && sources[name] === undefined);
    expect(silent, entry.key).toEqual([]);
  }
});

/** What each category must be readable in; where a maker's figure was not read, nothing more than its own unit. */
const SENSIBLE: Readonly<Partial<Record<Category, readonly UnitCode[]>>> = {
  "sheet-goods": ["square-foot", "square-metre", "msf"],
  "dimensional-lumber": ["linear-foot", "linear-metre", "board-foot", "cubic-metre"],
};
const SILENT = ["batt-r22-15", "batt-r22-23", "loose-fill", "spray-foam", "laminate-floor", "vinyl-floor"];
const SOLD_EACH = ["joint-compound", "adhesive", "sealant", "joist-hanger"];

describe("a price of every one", () => {
  test("is read in each sensible measure, there and back", () => {
    for (const entry of CATALOGUE) {
      const material = materialOf(entry);
      for (const unit of measuresOf(material)) {
        const read = convertFor(material, { value: ONE, unit: material.purchaseUnit }, unit);
        if (!read.ok) throw new Error(`${entry.key} in ${unit}: ${read.reason}`);
        const back = convertFor(material, { value: read.value, unit }, material.purchaseUnit);
        expect(back.ok && back.value.toFixed(20), `${entry.key} in ${unit}`).toBe(ONE.toFixed(20));
      }
    }
  });

  test("is read in what its category is compared by", () => {
    for (const [category, units] of Object.entries(SENSIBLE))
      for (const entry of of(category as Category))
        expect(measuresOf(materialOf(entry)), entry.key).toEqual(expect.arrayContaining([...units]));
  });

  test.each([
    ["shingle-3", ["square-foot", "square-metre", "square"]],
    ["metal-36-10", ["square-foot", "square-metre", "square", "linear-foot"]],
    ["siding-carton", ["square-foot", "square-metre", "square"]],
    ["batt-r13-15", ["square-foot", "square-metre", "piece", "cubic-foot"]],
    ["brick-modular", ["square-foot", "square-metre"]],
    ["concrete-80", ["kilogram", "pound", "cubic-foot", "cubic-yard", "cubic-metre"]],
    ["gravel", ["kilogram", "pound", "cubic-foot", "cubic-metre"]],
    ["nail-16d-50", ["piece", "kilogram", "pound"]],
    ["oak-floor", ["square-foot", "square-metre"]],
    ["paint", ["square-foot", "square-metre", "litre"]],
    ["door-interior-30-left-4", []],
  ] as const)("of %s is read in %j too", (key, units) => {
    expect(measuresOf(fromCatalogue(key)).slice(1)).toEqual(expect.arrayContaining([...units]));
  });

  test("is read in one more measure than its own unit, unless it is sold each or its cover was not read", () => {
    const alone = CATALOGUE.filter(
      (entry) =>
        entry.category !== "doors" &&
        entry.category !== "windows" &&
        measuresOf(materialOf(entry)).length === 1,
    );
    expect(alone.map(({ key }) => key).sort()).toEqual([...SILENT, ...SOLD_EACH].sort());
  });
});

test("wood panels are read on the 3/8 in basis, gypsum is not", () => {
  expect(measuresOf(fromCatalogue("ply-3-4"))).toContain("msf-3-8");
  expect(measuresOf(fromCatalogue("gypsum-1-2-4x8"))).not.toContain("msf-3-8");
});

test("every board weighs something by its actual size", () => {
  for (const entry of of("dimensional-lumber")) {
    const material = materialOf(entry);
    const foot = convertFor(material, { value: ONE, unit: "linear-foot" }, "pound");
    expect(foot.ok && foot.value.greaterThan("0.2"), entry.key).toBe(true);
  }
});

test("doors and windows are told apart by hand, jamb and frame, not by name alone", () => {
  const said = of("doors").map(({ sizes, identity }) => JSON.stringify([sizes, identity]));
  expect(new Set(said).size).toBe(said.length);
  for (const { key, identity, sizes } of of("doors")) {
    expect(identity?.doorKind, key).toBeDefined();
    expect(identity?.hand !== undefined, key).toBe(identity?.doorKind === "prehung");
    expect(sizes.jambDepth !== undefined, key).toBe(identity?.doorKind === "prehung");
  }
});

test("a panel's category is not mapped from millimetres onto inches", () => {
  const metric = fromCatalogue("ply-12-5-mm");
  expect(metric.dimensions.nominalThickness?.unit).toBe("millimetre");
  expect(metric.dimensions.thickness).toBeUndefined();
});

test("an entry written wrong is a mistake of the catalogue, and says so", () => {
  const wrong: CatalogueEntry = {
    key: "x",
    name: "X",
    category: "other",
    purchaseUnit: "each",
    sizes: { length: "long" },
  };
  expect(() => entryOf(wrong)).toThrow('"long" is no size');
});

describe("a material begun from the catalogue", () => {
  const picked = catalogued("concrete-80");
  if (picked === null) throw new Error("concrete-80 is gone");
  const entry = entryOf(picked);

  test("keeps where each figure was read that was left as it was", () => {
    expect(startedFrom(picked, { ...entry, sources: {} }).sources).toEqual(entry.sources);
  });

  test("has no source for a figure put in by hand", () => {
    const weighed = materialEntry.parse({
      name: "Our mix",
      category: "masonry",
      purchaseUnit: "bag",
      dimensions: { weight: "66 lb", yield: "0.6 cu ft" },
      shelfLifeDays: 120,
    });
    expect(Object.keys(startedFrom(picked, weighed).sources)).toEqual(["yield"]);
  });

  test("takes a source that was given before its own", () => {
    const said = { ...entry, sources: { weight: "my own scales" } };
    expect(startedFrom(picked, said).sources).toMatchObject({
      weight: "my own scales",
      yield: entry.sources.yield,
    });
  });
});
