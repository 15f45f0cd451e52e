import type * as z from "zod";
import { type Decimal, decimal, roundHalfUp } from "../decimal.ts";
import { textAs } from "../entry-fields.ts";
import type { Fault, FaultCode } from "../fault.ts";
import { lengthOf } from "../measure/length-text.ts";
import { quantityOf } from "../measure/quantity-text.ts";
import { systemOf, UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import { UNITS } from "../measure/units.ts";

/** Beyond these no house is measured: inches or millimetres; square feet or metres; things. */
const LONGEST = decimal(1_000_000);
const LARGEST_AREA = decimal(10_000_000);
const MOST_THINGS = 100_000;
const PLACES = 6;

type ZeroAllowed = Readonly<{ zero?: boolean }>;

/**
 * A length above zero (`zero`: or zero) of one unit system, in inches or millimetres; a bare number is in that unit, so
 * that what was stored as decimal text reads back as it was. Errors: those of lengthOf, not-positive, too-large.
 */
export function length(system: UnitSystem, { zero = false }: ZeroAllowed = {}) {
  return textAs<Decimal>((text) => {
    const read = lengthOf(text, system);
    if (!read.ok) return read.reason;
    if (read.value.isZero() && !zero) return "not-positive";
    return read.value.greaterThan(LONGEST) ? "too-large" : { value: read.value };
  }).meta({ examples: system === "metric" ? ["2440 mm", "2,44 m"] : ["8 ft 3-1/2 in", "92 5/8"] });
}

/** An area, zero allowed, in square feet or square metres. Errors: not-an-area, mixed-units, negative, not-positive, too-large. */
export function area(system: UnitSystem, { zero = false }: ZeroAllowed = {}) {
  const unit = UNITS_OF[system].area;
  return textAs<Decimal>((text) => {
    if (text.trim() === "") return "missing";
    if (text.trim().startsWith("-")) return "negative";
    const written = text.trim().replace(/^(\d+),(\d{1,2})(?!\d)/, "$1.$2");
    const read = quantityOf(/[a-z²]/i.test(written) ? written : `${written} ${unit}`);
    if (read === null || UNITS[read.unit].dimension !== "area") return "not-an-area";
    if (systemOf(read.unit) !== system) return "mixed-units";
    const value = roundHalfUp(
      read.value.times(UNITS[read.unit].factor).dividedBy(UNITS[unit].factor),
      PLACES,
    );
    if (value.isZero() && !zero) return "not-positive";
    return value.greaterThan(LARGEST_AREA) ? "too-large" : { value };
  }).meta({ examples: ["320"] });
}

/** A whole number of things, 1 (`zero`: 0) to 100,000, as text. Errors: not-a-number, not-whole, negative, not-positive, too-large. */
export function count({ zero = false }: ZeroAllowed = {}) {
  return textAs<Decimal>((text) => {
    if (!/^-?\d{1,12}(\.\d{1,12})?$/.test(text.trim()))
      return text.trim() === "" ? "missing" : "not-a-number";
    const value = decimal(text.trim());
    if (value.isNegative() && !value.isZero()) return "negative";
    if (!value.isInteger()) return "not-whole";
    if (value.isZero() && !zero) return "not-positive";
    return value.greaterThan(MOST_THINGS) ? "too-large" : { value: value.abs() };
  }).meta({ pattern: "^\\d+$", examples: ["4"] });
}

/** What is wrong between the fields of an entry, asked once each field alone is right. */
export function crossChecked<S extends z.ZodType>(
  schema: S,
  faultsIn: (inputs: z.output<S>) => readonly Fault[],
): S {
  return schema.superRefine((inputs, context) => {
    for (const { path, code } of faultsIn(inputs))
      context.addIssue({ code: "custom", message: code, path: path.split(".") });
  });
}

/** A fault at a field when `broken`, else none. */
export function faultIf(broken: boolean, path: string, code: FaultCode): Fault[] {
  return broken ? [{ path, code }] : [];
}
