import * as z from "zod";
import { choice, fields } from "../entry-fields.ts";
import { type Fault, faultsOf } from "../fault.ts";
import { UNIT_SYSTEMS, type UnitSystem } from "../measure/unit-system.ts";
import type { Reckoned } from "./calculator.ts";
import { CALCULATOR_NAMES, CALCULATORS, type CalculatorName } from "./calculators.ts";

/** A takeoff as handed in or as stored: which calculator, which unit system, and its inputs as text. */
export const takeoffEntry = fields({
  calculator: choice(CALCULATOR_NAMES),
  system: choice(UNIT_SYSTEMS),
  inputs: z.unknown(),
});

export type Takeoff = Readonly<{ calculator: CalculatorName; system: UnitSystem }> & Reckoned;
export type TakeoffRead =
  | Readonly<{ ok: true; value: Takeoff }>
  | Readonly<{ ok: false; faults: readonly Fault[] }>;

/**
 * A takeoff reckoned from what was typed, or from its own `stored` text parsed again: both give the same. `stored` is the
 * whole entry as JSON, lengths as decimal text in inches or millimetres. Errors: faults of the entry and, under "inputs",
 * of the calculator's fields.
 */
export function takeoffOf(given: unknown): TakeoffRead {
  const read = takeoffEntry.safeParse(given);
  if (!read.success) return { ok: false, faults: faultsOf(read.error) };
  const { calculator, system, inputs } = read.data;
  const reckoned = CALCULATORS[calculator](inputs, system);
  if (!reckoned.ok) return { ok: false, faults: reckoned.faults.map(underInputs) };
  const { stored, result, drawing } = reckoned;
  const entry = `{"calculator":${JSON.stringify(calculator)},"system":${JSON.stringify(system)},"inputs":${stored}}`;
  return { ok: true, value: { calculator, system, stored: entry, result, drawing } };
}

function underInputs(fault: Fault): Fault {
  return { ...fault, path: fault.path === "" ? "inputs" : `inputs.${fault.path}` };
}
