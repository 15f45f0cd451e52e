import { expect, test } from "vitest";
import { systemOf, UNIT_SYSTEMS, UNITS_OF } from "../../../lib/measure/unit-system.ts";
import { UNITS } from "../../../lib/measure/units.ts";

test("feet, pounds and board feet are imperial, metres and kilograms metric", () => {
  expect([systemOf("linear-foot"), systemOf("pound"), systemOf("board-foot")]).toEqual([
    "imperial",
    "imperial",
    "imperial",
  ]);
  expect([systemOf("millimetre"), systemOf("square-metre"), systemOf("kilogram")]).toEqual([
    "metric",
    "metric",
    "metric",
  ]);
});

test("each system says lengths, areas and volumes in its own units", () => {
  for (const system of UNIT_SYSTEMS) {
    const { length, run, area, volume } = UNITS_OF[system];
    expect([length, run, area, volume].map(systemOf)).toEqual([system, system, system, system]);
    const measured = [length, run, area, volume].map((unit) => UNITS[unit].dimension);
    expect(measured).toEqual(["length", "length", "area", "volume"]);
  }
});
