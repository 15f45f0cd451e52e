import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Quantity } from "../measure/units.ts";

/** What a place can be full by. */
export const SPACE_MEASURES = ["area", "volume", "weight", "count"] as const;
export type SpaceMeasure = (typeof SPACE_MEASURES)[number];

/**
 * Where stock lies: a shed, a wall of it, a corner of the garage. Limits: floor it takes up, room, weight it bears, pieces;
 * null: not said. covered: under a roof; ventilated: air moves through; null: not said.
 */
export type Place = Readonly<{
  id: string;
  name: string;
  note: string | null;
  area: Quantity | null;
  volume: Quantity | null;
  weight: Quantity | null;
  count: Decimal | null;
  covered: boolean | null;
  ventilated: boolean | null;
  archivedOn: LocalDate | null;
}>;
