import { expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import { inUnit } from "../../lib/measure/in-unit.ts";
import { quantityOf } from "../../lib/measure/quantity-text.ts";
import { unitNamed } from "../../lib/measure/unit-aliases.ts";
import { UNITS, type UnitCode } from "../../lib/measure/units.ts";
import { frozenTable, tablesOf } from "../support/shared-data.ts";
import judged from "./units-judge.json" with { type: "json" };

// GNU Units 2.22 (Debian package "units"), asked by units-judge.mjs, its answers frozen in units-judge.json: read, to 15
// digits. It computes in binary floating point, so fourteen are compared.
test("every conversion agrees with GNU units", () => {
  expect(judged.conversions.length).toBe(81);
  for (const { from, to, factor } of judged.conversions) {
    const [ours, theirs] = [unitNamed(from), unitNamed(to)];
    if (ours === null || theirs === null) throw new Error(`${from} or ${to} is no unit`);
    const off = inUnit({ value: decimal(1), unit: ours }, theirs)
      .dividedBy(factor)
      .minus(1)
      .abs();
    expect(off.lessThan("1e-14"), `${from} -> ${to} is off by ${off}`).toBe(true);
  }
});

// The judge has a board foot as a volume; here it is board measure, a twelfth of a cubic foot of nominal size.
test("a board foot is a twelfth of a cubic foot of nominal size, as GNU units has it", () => {
  const boardFoot = UNITS["cubic-foot"].factor.dividedBy(12);
  expect(boardFoot.toString()).toBe(judged.facts["board foot in cubic metres"]);
  expect(boardFoot.times(UNITS.mbf.factor).toString()).toBe(
    judged.facts["thousand board feet in cubic metres"],
  );
});

// FAO Forestry document T0269E, appendix II: "1000 board feet" = 2.36 m3, printed to three digits (read).
// Forest-industry conversion tables: 1 m3 = 423.776 board feet (read).
test("a thousand board feet is 2.36 cubic metres, a cubic metre 423.776 board feet", () => {
  const boardFoot = UNITS["cubic-foot"].factor.dividedBy(12);
  expect(boardFoot.times(1000).toFixed(2)).toBe("2.36");
  expect(decimal(1).dividedBy(boardFoot).toFixed(3)).toBe("423.776");
});

// Exact by the definition 1 in = 25.4 mm (derived), lengths as GNU units has them (read).
test.each([
  ["8 ft", "2438.4"],
  ["16 in", "406.4"],
  ["24 in", "609.6"],
  ["7/16 in", "11.1125"],
  ["15/32 in", "11.90625"],
  ["19/32 in", "15.08125"],
  ["23/32 in", "18.25625"],
])("%s is %s mm", (text, millimetres) => {
  const quantity = quantityOf(text);
  expect(quantity && inUnit(quantity, "millimetre").toString()).toBe(millimetres);
});

// A wall on a precut stud (92-5/8 in, from memory) with three 1-1/2 in plates is 97.125 in high (derived).
test("a precut stud and three plates are 97.125 inches", () => {
  const stud = quantityOf("92-5/8 in");
  const plate = quantityOf("1-1/2 in");
  expect(stud && plate && stud.value.plus(plate.value.times(3)).toString()).toBe("97.125");
});

// UN/CEFACT Recommendation 20, revision 17e (2021): status blank = live, X = deleted (read).
const LIVE: Readonly<Record<string, UnitCode>> = {
  EA: "each",
  H87: "piece",
  LF: "linear-foot",
  LM: "linear-metre",
  INH: "inch",
  YRD: "yard",
  MMT: "millimetre",
  CMT: "centimetre",
  FTK: "square-foot",
  MTK: "square-metre",
  SQR: "square",
  BFT: "board-foot",
  MBF: "mbf",
  FTQ: "cubic-foot",
  YDQ: "cubic-yard",
  MTQ: "cubic-metre",
  LTR: "litre",
  LBR: "pound",
  KGM: "kilogram",
  TNE: "tonne",
};

test("the units with a live Recommendation 20 code carry it, the others none", () => {
  const carried = Object.entries(UNITS).flatMap(([unit, { rec20 }]) =>
    rec20 === null ? [] : [[rec20, unit]],
  );
  expect(Object.fromEntries(carried)).toEqual(LIVE);
});

// The same list in tests/references/frozen/rec-20-building.csv, copied from the published one.
test("every code carried is live in the list of the recommendation", () => {
  for (const rows of tablesOf("rec-20-building.csv", "units/uncefact_rec20_building.csv")) {
    const status = new Map(rows.map((row) => [row.code, row.status]));
    for (const code of Object.keys(LIVE)) expect(status.get(code), code).toBe("");
  }
});

// The same list (read): what stores call a sheet, a bundle, a roll, a bag or a box has a code, but a deleted one.
test.each([
  ["ST", "sheet"],
  ["BE", "bundle"],
  ["RO", "roll"],
  ["BG", "bag"],
  ["BX", "box"],
  ["TS", "msf"],
] as const)("the code %s was deleted, so a %s carries none", (code, unit) => {
  const row = frozenTable("rec-20-building.csv").find((one) => one.code === code);
  expect(row?.status).toBe("X");
  expect(UNITS[unit].rec20).toBeNull();
});
