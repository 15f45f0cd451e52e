// GNU units as judge of lib/measure: asks it for every conversion below and writes what it answers to units-judge.json.
// Run: node tests/references/units-judge.mjs   (needs the Debian package "units")
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";

// Our unit -> how GNU units is asked for it. A board foot is its cubic twelfth of a foot there.
const ASKED = {
  length: {
    inch: "inch",
    "linear-foot": "foot",
    yard: "yard",
    millimetre: "mm",
    centimetre: "cm",
    "linear-metre": "m",
  },
  area: { "square-foot": "ft^2", "square-metre": "m^2", square: "100 ft^2", msf: "1000 ft^2" },
  board: { "board-foot": "boardfoot", mbf: "1000 boardfoot" },
  volume: { "cubic-foot": "ft^3", "cubic-yard": "yd^3", "cubic-metre": "m^3", litre: "liter" },
  mass: { pound: "lb", kilogram: "kg", tonne: "tonne" },
};
// Further questions of the trade, by name.
const FACTS = {
  "board foot in cubic metres": ["boardfoot", "m^3"],
  "thousand board feet in cubic metres": ["1000 boardfoot", "m^3"],
  "cubic metre in board feet": ["m^3", "boardfoot"],
  "thousand square feet of an eighth of an inch in cubic metres": ["1000 ft^2 inch/8", "m^3"],
  "thousand square feet of three eighths of an inch in cubic metres": ["1000 ft^2 3 inch/8", "m^3"],
  "eight feet in millimetres": ["8 ft", "mm"],
  "sixteen inches in millimetres": ["16 inch", "mm"],
  "twenty-four inches in millimetres": ["24 inch", "mm"],
  "sheet of 4 x 8 ft in square metres": ["4 ft 8 ft", "m^2"],
};

/** The factor from one unit to another, to 15 significant digits. */
function answer(from, to) {
  return execFileSync("units", ["--terse", "--output-format", "%.15g", from, to], {
    encoding: "utf8",
  }).trim();
}

const version = execFileSync("units", ["--version"], { encoding: "utf8" }).split("\n")[0];
const conversions = Object.values(ASKED).flatMap((units) =>
  Object.entries(units).flatMap(([from, asked]) =>
    Object.entries(units).map(([to, wanted]) => ({ from, to, factor: answer(asked, wanted) })),
  ),
);
const facts = Object.fromEntries(Object.entries(FACTS).map(([name, [from, to]]) => [name, answer(from, to)]));
const frozen = { judge: version, digits: 15, conversions, facts };
writeFileSync(new URL("units-judge.json", import.meta.url), `${JSON.stringify(frozen, null, 2)}\n`);
console.log(`${version}: ${conversions.length} conversions, ${Object.keys(facts).length} facts written`);
