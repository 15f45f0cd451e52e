import { describe, expect, test } from "vitest";
import { CALCULATOR_NAMES } from "../../../lib/takeoff/calculators.ts";
import { view } from "../../../lib/takeoff/drawing.ts";
import { type Takeoff, takeoffOf } from "../../../lib/takeoff/takeoff-entry.ts";
import { reckoned } from "../../support/takeoff-example.ts";
import { TYPED } from "../../support/takeoff-inputs.ts";

/** Words of a formula that are neither fields nor measures. */
const FUNCTIONS = ["ceil", "max", "min", "pi", "sqrt", "sum"];

function fieldNames(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(fieldNames);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, below]) => [name, ...fieldNames(below)]);
}

/** Every number of an entry by the name of its field. */
function valuesByName(value: unknown, found = new Map<string, number[]>()): Map<string, number[]> {
  if (typeof value !== "object" || value === null) return found;
  for (const [name, below] of Object.entries(value)) {
    if (typeof below === "string") found.set(name, [...(found.get(name) ?? []), Number(below)]);
    valuesByName(below, found);
  }
  return found;
}

function known({ stored, result }: Takeoff): Set<string> {
  // What there is none of has no measure of its own, but is named in the sum it adds nothing to.
  const edges = ["eaves", "rakes", "ridges", "hips", "valleys", "highEdges", "parts"];
  return new Set([
    ...FUNCTIONS,
    ...edges,
    ...fieldNames(JSON.parse(stored)),
    ...result.measures.map(({ name }) => name),
  ]);
}

describe.each(CALCULATOR_NAMES)("%s", (name) => {
  test("stored as text and read again gives the same inputs, results and drawing", () => {
    const first = reckoned(name, TYPED[name]);
    const again = takeoffOf(JSON.parse(first.stored));
    expect(again).toEqual({ ok: true, value: first });
    expect(first.stored).not.toMatch(/\d ft|\d-\d/);
  });

  test("every formula speaks of fields and measures only", () => {
    const takeoff = reckoned(name, TYPED[name]);
    const words = known(takeoff);
    for (const { formula } of [...takeoff.result.measures, ...takeoff.result.lines])
      for (const word of formula.match(/[A-Za-z]+/g) ?? []) expect(words, formula).toContain(word);
  });

  test("every quantity is above zero and every drawn number is finite", () => {
    const { result, drawing } = reckoned(name, TYPED[name]);
    expect(result.lines.length).toBeGreaterThan(0);
    for (const { quantity } of result.lines) expect(quantity.value.greaterThan(0)).toBe(true);
    expect(drawing.views.length).toBeGreaterThan(0);
    for (const { polygons, strokes, spans, box } of drawing.views) {
      const points = [
        ...polygons.flatMap((one) => one.points),
        ...[...strokes, ...spans].flatMap((one) => [one.from, one.to]),
      ];
      expect(points.flat().every(Number.isFinite)).toBe(true);
      expect(box.width).toBeGreaterThan(0);
      expect(box.height).toBeGreaterThan(0);
    }
  });

  test("a dimension line that bears a field's name is as long as that field", () => {
    const { stored, drawing } = reckoned(name, TYPED[name]);
    const values = valuesByName(JSON.parse(stored));
    for (const { name: field, value } of drawing.views.flatMap(({ spans }) => spans))
      if (values.has(field)) expect(values.get(field), field).toContain(value);
  });

  test("dimension lines lie on what they measure", () => {
    for (const { name: of, polygons, strokes, box } of reckoned(name, TYPED[name]).drawing.views)
      if (name !== "roofing") expect(view(of, { polygons, strokes }).box).toEqual(box);
  });

  test("feet in a metric entry are refused, each where it stands", () => {
    const feet = JSON.stringify(TYPED[name]).split(" ft").length - 1;
    const read = takeoffOf({ calculator: name, system: "metric", inputs: TYPED[name] });
    const mixed = read.ok ? [] : read.faults.filter(({ code }) => code === "mixed-units");
    expect(mixed.length).toBeGreaterThanOrEqual(Math.min(feet, 1));
    expect(mixed.every(({ path }) => path.startsWith("inputs."))).toBe(true);
  });
});

test("an unknown calculator, an unknown system and no inputs are refused", () => {
  const codes = (given: unknown) => {
    const read = takeoffOf(given);
    return read.ok ? [] : read.faults.map(({ path, code }) => `${path} ${code}`);
  };
  expect(codes({ calculator: "dome", system: "nautical", inputs: {} })).toEqual([
    "calculator unknown-choice",
    "system unknown-choice",
  ]);
  expect(codes({ calculator: "slab", system: "metric" })).toEqual(["inputs missing"]);
  expect(codes({ calculator: "slab", system: "metric", inputs: { depth: "1" } })).toContain(
    "inputs.depth unknown-field",
  );
  expect(codes(null)).toEqual([" not-an-object"]);
});
