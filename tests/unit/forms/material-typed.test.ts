import { expect, test } from "vitest";
import { fingerprint } from "../../../app/_forms/fingerprint.ts";
import { materialTyped } from "../../../app/materials/material-typed.ts";
import { decimal } from "../../../lib/decimal.ts";
import { materialEntry } from "../../../lib/materials/material-entry.ts";

function sizes(given: Readonly<Record<string, readonly [string, string]>>, locale = "en-CA") {
  const form = new FormData();
  for (const [name, [text, unit]] of Object.entries(given)) {
    form.append(`dimensions.${name}`, text);
    form.append(`dimensions.${name}.unit`, unit);
  }
  return materialTyped(form, locale).dimensions;
}

test("a fraction of an inch is read as on a tape", () => {
  expect(sizes({ length: ["92 5/8", "inch"] })).toEqual({ length: "92.625 inch" });
});

test("a size typed with its own unit keeps that unit", () => {
  expect(sizes({ length: ["8 ft", "inch"] })).toEqual({ length: "8 linear-foot" });
});

test("a decimal comma is read in the language", () => {
  expect(sizes({ thickness: ["12,5", "millimetre"] }, "fr-CA")).toEqual({ thickness: "12.5 millimetre" });
});

test("an empty size is left out", () => {
  expect(sizes({ length: ["", "inch"], width: [" ", "inch"] })).toEqual({});
});

test.each([
  ["1.2.3", "not-a-size"],
  ["-5", "not-positive"],
  ["a foot", "not-a-size"],
])("the entry refuses %s at its field: %s", (text, code) => {
  const read = materialEntry.shape.dimensions.safeParse(sizes({ length: [text, "inch"] }));
  expect(read.error?.issues.map(({ path, message }) => [path.join("."), message])).toEqual([
    ["length", code],
  ]);
});

test("what tells a material apart is read as chosen, and left out where nothing is", () => {
  const form = new FormData();
  for (const [name, text] of [
    ["identity.hand", "left"],
    ["identity.grade", " No. 2 "],
    ["identity.doorKind", ""],
    ["shelfLifeDays", "90"],
  ] as const)
    form.append(name, text);
  const read = materialTyped(form, "en-CA");
  expect(read.identity).toStrictEqual({ hand: "left", grade: "No. 2" });
  expect(read.shelfLifeDays).toBe("90");
  expect(materialTyped(new FormData(), "en-CA")).toMatchObject({ identity: {}, shelfLifeDays: null });
});

test("a fingerprint differs when a figure does, and only then", () => {
  const stud = { name: "Stud", length: decimal("92.625") };
  expect(fingerprint(stud)).toBe(fingerprint({ name: "Stud", length: decimal("92.6250") }));
  expect(fingerprint(stud)).not.toBe(fingerprint({ ...stud, length: decimal("92.626") }));
});
