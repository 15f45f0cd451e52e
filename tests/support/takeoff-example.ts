import { type Decimal, roundHalfUp } from "../../lib/decimal.ts";
import type { UnitSystem } from "../../lib/measure/unit-system.ts";
import type { Quantity } from "../../lib/measure/units.ts";
import type { CalculatorName } from "../../lib/takeoff/calculators.ts";
import type { View } from "../../lib/takeoff/drawing.ts";
import type { LineName, TakeoffLine } from "../../lib/takeoff/result.ts";
import { type Takeoff, takeoffOf } from "../../lib/takeoff/takeoff-entry.ts";

export type Inputs = Readonly<Record<string, unknown>>;

/** A takeoff that is accepted. Throws: {Error} with the faults when it is not. */
export function reckoned(
  calculator: CalculatorName,
  inputs: Inputs,
  system: UnitSystem = "imperial",
): Takeoff {
  const read = takeoffOf({ calculator, system, inputs });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

/** What is wrong with a takeoff, as "path code". */
export function refused(
  calculator: CalculatorName,
  inputs: Inputs,
  system: UnitSystem = "imperial",
): string[] {
  const read = takeoffOf({ calculator, system, inputs });
  return read.ok ? [] : read.faults.map(({ path, code }) => `${path} ${code}`);
}

/** A value to six places at most, with its unit where it has one. */
export function read(value: Quantity | Decimal, places = 6): string {
  return "unit" in value
    ? `${roundHalfUp(value.value, places)} ${value.unit}`
    : roundHalfUp(value, places).toString();
}

/** A measure by its name. Throws: {Error} when there is none. */
export function measured({ result }: Takeoff, name: string, places = 6): string {
  const measure = result.measures.find((one) => one.name === name);
  if (measure === undefined) throw new Error(`no measure ${name}`);
  return read(measure.value, places);
}

/** All lines of a name: quantity and, for cut pieces, "at" their length. */
export function lined({ result }: Takeoff, name: LineName, places = 6): string[] {
  return result.lines
    .filter((line) => line.name === name)
    .map(({ quantity, cut }) =>
      cut === null ? read(quantity, places) : `${read(quantity, places)} at ${read(cut, places)}`,
    );
}

/** The first line of a name. Throws: {Error} when there is none. */
export function lineOf({ result }: Takeoff, name: LineName): TakeoffLine {
  const line = result.lines.find((one) => one.name === name);
  if (line === undefined) throw new Error(`no line ${name}`);
  return line;
}

/** A view of the drawing. Throws: {Error} when there is none. */
export function viewOf({ drawing }: Takeoff, name: View["name"]): View {
  const view = drawing.views.find((one) => one.name === name);
  if (view === undefined) throw new Error(`no view ${name}`);
  return view;
}

/** What is drawn under a name: how many polygons and strokes. */
export function drawn(view: View, name: string): number {
  return [...view.polygons, ...view.strokes].filter((part) => part.name === name).length;
}

/** The corners of each polygon of a name. */
export function cornersOf(view: View, name: string): View["polygons"][number]["points"][] {
  return view.polygons.filter((polygon) => polygon.name === name).map(({ points }) => points);
}
