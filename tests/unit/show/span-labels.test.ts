import { expect, test } from "vitest";
import type { UnitSystem } from "../../../lib/measure/unit-system.ts";
import { drawnView } from "../../../lib/show/drawn-view.ts";
import { type LabelBox, letterMark, overlap, spanLabels } from "../../../lib/show/span-labels.ts";
import { CALCULATOR_NAMES, type CalculatorName } from "../../../lib/takeoff/calculators.ts";
import { span } from "../../../lib/takeoff/drawing.ts";
import { type Inputs, reckoned } from "../../support/takeoff-example.ts";
import { EXTREME, TYPED } from "../../support/takeoff-inputs.ts";

const longSide = span("length", [0, 10], [400, 10]);
const shortSide = span("width", [400, 10], [400, 0]);

test("a text is written along its line where there is room", () => {
  const [label] = spanLabels([longSide], ["Length 33 ft"], 20);
  expect(label).toEqual({
    box: { x: 200, y: 10, width: 12 * 0.62 * 20, height: 25 },
    upright: false,
    mark: null,
  });
});

test("a line too short for its text gets a letter beside it", () => {
  const labels = spanLabels([longSide, shortSide], ["Length 33 ft", "Width 10 in"], 20);
  expect(labels.map(({ mark }) => mark)).toEqual([null, "A"]);
  expect(labels[1]?.box.x).toBeGreaterThan(400);
});

test("the same text has the same letter, another text another", () => {
  const labels = spanLabels(
    [shortSide, span("width", [0, 10], [0, 0]), span("depth", [200, 10], [200, 0])],
    ["Width 10 in", "Width 10 in", "Depth 10 in"],
    20,
  );
  expect(labels.map(({ mark }) => mark)).toEqual(["A", "A", "B"]);
});

test("after Z come AA and AB", () => {
  expect([0, 25, 26, 27, 51, 52].map(letterMark)).toEqual(["A", "Z", "AA", "AB", "AZ", "BA"]);
});

function covered(boxes: readonly LabelBox[]): number {
  return boxes.flatMap((one, at) => boxes.slice(at + 1).filter((other) => overlap(one, other))).length;
}

test("an overhang of nothing is not told, other lengths to a sixty-fourth of an inch", () => {
  const roof = { length: "40 ft", width: "5 ft", slope: "5", eaveOverhang: "1", rakeOverhang: "0" };
  const told = reckoned("gable-roof", roof).drawing.views.flatMap((view) =>
    drawnView(view, "imperial", (name) => name).dimensions.map(({ text }) => text),
  );
  expect(told.filter((text) => text.startsWith("rakeOverhang"))).toEqual([]);
  // 31 x 5 / 12 = 12.916667 in of rise, 59/64 = 0.921875 is nearest
  expect(told).toContain("rise 1 ft 59/64 in");
});

const named = (name: string) => `Overhang at the rakes, ${name}`;

/** Of every view: labels that cover one another, and labels cut off at the edge of the picture. */
function faultsOf(calculator: CalculatorName, inputs: Inputs, system: UnitSystem): string[] {
  return reckoned(calculator, inputs, system).drawing.views.flatMap((view) => {
    const { box, letters, dimensions } = drawnView(view, system, named);
    const [left = 0, top = 0, width = 0, height = 0] = box.split(" ").map(Number);
    const labels = spanLabels(
      view.spans.filter(({ value }) => value !== 0),
      dimensions.map(({ text }) => text),
      letters,
    ).map((label) => label.box);
    const cut = labels.filter(
      (label) =>
        label.x - label.width / 2 < left ||
        label.x + label.width / 2 > left + width ||
        label.y - label.height / 2 < top ||
        label.y + label.height / 2 > top + height,
    );
    return [
      ...(covered(labels) > 0 ? [`${calculator} ${view.name}: ${covered(labels)} over one another`] : []),
      ...(cut.length > 0 ? [`${calculator} ${view.name}: ${cut.length} cut off`] : []),
    ];
  });
}

test.each(CALCULATOR_NAMES)(
  "%s: no label covers another or is cut off, however long, narrow or small",
  (name) => {
    expect(faultsOf(name, TYPED[name], "imperial")).toEqual([]);
    expect(EXTREME[name].flatMap((inputs) => faultsOf(name, inputs, "imperial"))).toEqual([]);
  },
);
