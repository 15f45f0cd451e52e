import { inUnit } from "../measure/in-unit.ts";
import { lengthText } from "../measure/length-text.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Quantity } from "../measure/units.ts";

/** Parts of an inch or millimetre a tape shows. */
const FINEST = { imperial: 64, metric: 1 } as const;

/** A length as read off a tape. Units: any length. Rounds: up to a sixty-fourth of an inch or a millimetre, for reading: a piece too short is no use. */
export function cutText(cut: Quantity, system: UnitSystem): string {
  const finest = FINEST[system];
  const exact = inUnit(cut, UNITS_OF[system].length);
  return lengthText(exact.times(finest).ceil().dividedBy(finest), system);
}
