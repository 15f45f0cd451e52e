import type * as z from "zod";
import { type Fault, faultsOf } from "../fault.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import type { Drawing } from "./drawing.ts";
import type { TakeoffResult } from "./result.ts";

/** One small calculator: what it asks, what comes of it, and its picture. */
export type Calculator<Inputs> = Readonly<{
  inputs: (system: UnitSystem) => z.ZodType<Inputs>;
  results: (inputs: Inputs, system: UnitSystem) => TakeoffResult;
  drawing: (inputs: Inputs, system: UnitSystem) => Drawing;
}>;

/**
 * stored: the inputs as JSON text (lengths as decimal text in inches or millimetres); reckoned again from it, results
 * and drawing are the same.
 */
export type Reckoned = Readonly<{ stored: string; result: TakeoffResult; drawing: Drawing }>;
export type Reckoning = Readonly<{ ok: true } & Reckoned> | Readonly<{ ok: false; faults: readonly Fault[] }>;

/** A calculator whose inputs are known to itself only. */
export type Reckoner = (given: unknown, system: UnitSystem) => Reckoning;

/** From what was handed in to results and drawing, or every fault of it. Errors: those of the calculator's inputs, as faults. */
export function reckonerOf<Inputs>(calculator: Calculator<Inputs>): Reckoner {
  return (given, system) => {
    const read = calculator.inputs(system).safeParse(given);
    if (!read.success) return { ok: false, faults: faultsOf(read.error) };
    return {
      ok: true,
      stored: JSON.stringify(read.data),
      result: calculator.results(read.data, system),
      drawing: calculator.drawing(read.data, system),
    };
  };
}
