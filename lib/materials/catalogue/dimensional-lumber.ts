import { dressedSize } from "../dressed-sizes.ts";
import type { Identity } from "../identity.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { DENSITY, DRESSED, LIFT_BY_BOARD_FEET, LIFT_COUNT, MEMORY } from "./sources.ts";

/** Nominal size, length (null: by the thousand board feet, in random lengths), pieces in a lift with where that was read. */
type Row = readonly [nominal: string, length: string | null, perLift?: string, liftSource?: string];

const FRAMING: readonly Row[] = [
  ["2x4", "8 ft"],
  ["2x4", "10 ft"],
  ["2x4", "12 ft"],
  ["2x4", "16 ft"],
  ["2x6", "8 ft", "126", LIFT_COUNT],
  ["2x6", "10 ft", "126", LIFT_COUNT],
  ["2x6", "12 ft", "126", LIFT_COUNT],
  ["2x6", "16 ft", "126", LIFT_COUNT],
  ["2x8", "8 ft", "187", LIFT_BY_BOARD_FEET],
  ["2x8", "12 ft", "125", LIFT_BY_BOARD_FEET],
  ["2x8", "16 ft", "94", LIFT_BY_BOARD_FEET],
  ["2x10", "12 ft", "105", LIFT_COUNT],
  ["2x10", "14 ft", "105", LIFT_COUNT],
  ["2x10", "16 ft", "105", LIFT_COUNT],
  ["2x12", "12 ft", "84", LIFT_COUNT],
  ["2x12", "16 ft", "84", LIFT_COUNT],
  ["2x4", null],
  ["2x6", null],
  ["2x10", null],
];
/** Precut: with three plates they make a wall of 8 ft 1-1/8 in or 9 ft 1-1/8 in. */
const STUDS: readonly Row[] = [
  ["2x4", "92-5/8 in"],
  ["2x4", "104-5/8 in"],
  ["2x6", "92-5/8 in"],
];
const BOARDS: readonly Row[] = [
  ["1x2", "8 ft"],
  ["1x3", "8 ft"],
  ["1x4", "8 ft"],
  ["1x6", "8 ft"],
  ["1x8", "8 ft"],
  ["1x12", "8 ft"],
];
const ABOVE_GROUND: readonly Row[] = [
  ["5/4x6", "12 ft"],
  ["2x4", "8 ft"],
  ["2x6", "12 ft"],
  ["2x8", "12 ft"],
  ["2x10", "12 ft"],
];
const IN_GROUND: readonly Row[] = [
  ["4x4", "8 ft"],
  ["6x6", "8 ft"],
];

function writtenSizes([nominal, length, perLift]: Row): WrittenSizes {
  const size = dressedSize(nominal);
  if (size === null) throw new Error(`${nominal} is not in the table of dressed sizes`);
  return {
    nominalThickness: `${size.nominalThickness.value} in`,
    nominalWidth: `${size.nominalWidth.value} in`,
    thickness: `${size.thickness.value} in`,
    width: `${size.width.value} in`,
    density: "35 pcf",
    ...(length === null ? {} : { length }),
    ...(perLift === undefined ? {} : { perLift: `${perLift} pieces` }),
  };
}

/** said: what the name says of the grade. */
function lumber(
  kind: string,
  words: string,
  identity: Identity,
  rows: readonly Row[],
  ...said: readonly string[]
): CatalogueEntry[] {
  return rows.map((row): CatalogueEntry => {
    const [nominal, length, , liftSource] = row;
    const dressed = dressedSize(nominal)?.fromMemory ? MEMORY : DRESSED;
    const precut = length?.includes("5/8") ? { length: MEMORY } : {};
    return {
      key: [kind, nominal, length ?? "mbf"]
        .join(" ")
        .toLowerCase()
        .replaceAll(/[^a-z0-9]+/g, "-"),
      name: [`${kind} ${nominal}`, length ?? "random lengths", ...said].join(", "),
      words,
      category: "dimensional-lumber",
      purchaseUnit: length === null ? "mbf" : "piece",
      sizes: writtenSizes(row),
      identity,
      sources: {
        thickness: dressed,
        width: dressed,
        density: DENSITY,
        ...precut,
        ...(liftSource === undefined ? {} : { perLift: liftSource }),
      },
    };
  });
}

export const DIMENSIONAL_LUMBER: readonly CatalogueEntry[] = [
  ...lumber("Stud", "SPF spruce precut framing", { grade: "Stud" }, STUDS),
  ...lumber("Spruce-pine-fir", "SPF framing joist rafter plank", { grade: "No. 2" }, FRAMING, "No. 2"),
  ...lumber("Pine board", "common board strapping furring trim", {}, BOARDS),
  ...lumber("Pressure-treated", "PT deck decking joist", { treatment: "above-ground" }, ABOVE_GROUND),
  ...lumber("Pressure-treated post", "PT ground contact", { treatment: "ground-contact" }, IN_GROUND),
];
