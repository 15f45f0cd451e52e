import type { UnitCode } from "./units.ts";

/** The two ways a job is measured. One entry keeps to one of them. */
export const UNIT_SYSTEMS = ["imperial", "metric"] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

/** The unit a bare length is in, and the units its areas and volumes are said in. */
export const UNITS_OF: Readonly<
  Record<UnitSystem, Readonly<{ length: UnitCode; run: UnitCode; area: UnitCode; volume: UnitCode }>>
> = {
  imperial: { length: "inch", run: "linear-foot", area: "square-foot", volume: "cubic-foot" },
  metric: { length: "millimetre", run: "linear-metre", area: "square-metre", volume: "cubic-metre" },
};

const METRIC: ReadonlySet<UnitCode> = new Set([
  "linear-metre",
  "millimetre",
  "centimetre",
  "square-metre",
  "cubic-metre",
  "litre",
  "kilogram",
  "tonne",
  "kilogram-per-cubic-metre",
]);

/** The system a measuring unit belongs to. Units: none converted. Source: the unit definitions named in units.ts. */
export function systemOf(unit: UnitCode): UnitSystem {
  return METRIC.has(unit) ? "metric" : "imperial";
}
