import { expect, test } from "vitest";
import en from "../../../app/_words/en.json" with { type: "json" };
import { CALCULATOR_NAMES } from "../../../lib/takeoff/calculators.ts";
import { reckoned } from "../../support/takeoff-example.ts";
import { EXTREME, TYPED } from "../../support/takeoff-inputs.ts";

const { fields, rows, measures } = en.takeoff;
const KNOWN = new Set(Object.keys({ ...fields, ...rows, ...measures }));

test.each(CALCULATOR_NAMES)("every dimension drawn and every step of %s has words", (name) => {
  const used = [TYPED[name], ...EXTREME[name]].flatMap((inputs) => {
    const { drawing, result } = reckoned(name, inputs);
    return [
      ...drawing.views.flatMap(({ spans }) => spans.map((one) => one.name)),
      ...result.measures.map((one) => one.name),
    ];
  });
  expect([...new Set(used)].filter((one) => !KNOWN.has(one))).toEqual([]);
});
