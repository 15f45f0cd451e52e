import { expect, test } from "vitest";
import { INPUT_SHAPES } from "../../../app/projects/[id]/takeoff/input-shapes.ts";
import { inputsGiven, inputsTyped } from "../../../app/projects/[id]/takeoff/typed-inputs.ts";
import { CALCULATOR_NAMES } from "../../../lib/takeoff/calculators.ts";
import { takeoffOf } from "../../../lib/takeoff/takeoff-entry.ts";
import { reckoned } from "../../support/takeoff-example.ts";
import { TYPED } from "../../support/takeoff-inputs.ts";

test("every calculator's stored entry fills its form, and the form gives the same entry back", () => {
  for (const calculator of CALCULATOR_NAMES) {
    const { stored } = reckoned(calculator, TYPED[calculator]);
    const { inputs } = JSON.parse(stored) as { inputs: unknown };
    const typed = inputsTyped(INPUT_SHAPES[calculator], inputs, "imperial");
    const again = takeoffOf({
      calculator,
      system: "imperial",
      inputs: inputsGiven(INPUT_SHAPES[calculator], typed),
    });
    expect(again.ok ? JSON.parse(again.value.stored) : again.faults).toEqual(JSON.parse(stored));
  }
});

test("rows left empty at the end are not sent; an empty one between two is, so that faults stay at their rows", () => {
  const shape = INPUT_SHAPES.footing;
  const typed = {
    "runs.0.length": "8 ft",
    "runs.1.length": "",
    "runs.2.length": "4 ft",
    "runs.3.length": " ",
  };
  expect(inputsGiven(shape, typed)).toEqual({ runs: [{ length: "8 ft" }, {}, { length: "4 ft" }] });
});
