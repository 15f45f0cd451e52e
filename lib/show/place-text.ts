import type { Decimal } from "../decimal.ts";
import { inUnit } from "../measure/in-unit.ts";
import type { UnitCode } from "../measure/units.ts";
import type { Load } from "../stock/load-weight.ts";
import type { Place, SpaceMeasure } from "../stock/place.ts";
import { type Fits, roomOf } from "../stock/place-room.ts";
import { SPACE_UNITS } from "../stock/space-of.ts";
import { type CountText, countText } from "./count-text.ts";
import { figureText, quantityText } from "./money-text.ts";
import { type WeightText, weightText } from "./weight-text.ts";

/**
 * How full a place is by one of its limits, for reading. share: of the limit, 0 to 1 and more, for drawing only. over: by how much it
 * is overfull. unknown: materials there whose size is not known; `used` is then "at least".
 */
export type RoomText = Readonly<{
  measure: SpaceMeasure;
  unit: UnitCode;
  used: string;
  limit: string;
  free: string;
  over: string | null;
  share: number;
  unknown: readonly string[];
}>;

/** The unit a place's limit is read in: the one it was given in. */
function unitOf(place: Place, measure: SpaceMeasure): UnitCode {
  return measure === "count" ? SPACE_UNITS.count : (place[measure]?.unit ?? SPACE_UNITS[measure]);
}

/** The limits of a place beside what is used of each. A place without limits has none. Rounds: to 0.1 for reading. */
export function roomTexts(place: Place, loads: readonly Load[], locale: string): RoomText[] {
  return roomOf(place, loads).flatMap(({ measure, limit, used, free, unknown }) => {
    if (limit === null || free === null) return [];
    const unit = unitOf(place, measure);
    const text = (value: Decimal) =>
      figureText(
        measure === "count" ? value : inUnit({ value, unit: SPACE_UNITS[measure] }, unit),
        locale,
        0,
        1,
      );
    return [
      {
        measure,
        unit,
        used: text(used),
        limit: text(limit),
        free: text(free),
        over: free.isNegative() ? text(free.abs()) : null,
        share: used.dividedBy(limit).toNumber(),
        unknown,
      },
    ];
  });
}

/** A place for a list. lots: how many lots lie there. panels: sheet goods do. */
export type PlaceText = Readonly<{
  id: string;
  name: string;
  note: string | null;
  archived: boolean;
  covered: boolean | null;
  ventilated: boolean | null;
  lots: number;
  panels: boolean;
  rooms: readonly RoomText[];
  weight: WeightText;
}>;

/** A place with how full it is and what lies there weighs. Rounds: for reading. */
export function placeText(place: Place, loads: readonly Load[], locale: string): PlaceText {
  const { id, name, note, covered, ventilated, archivedOn } = place;
  return {
    id,
    name,
    note,
    archived: archivedOn !== null,
    covered,
    ventilated,
    lots: loads.length,
    panels: loads.some(({ material }) => material.category === "sheet-goods"),
    rooms: roomTexts(place, loads, locale),
    weight: weightText(loads, locale),
  };
}

/** How many more of a material fit, for reading. quantity null: no limit that can be reckoned. */
export type FitsText = Readonly<{
  quantity: CountText | null;
  by: SpaceMeasure | null;
  atMost: boolean;
  unknown: readonly SpaceMeasure[];
}>;

/** What fits, as text. Rounds: for reading. */
export function fitsText({ quantity, by, atMost, unknown }: Fits, locale: string): FitsText {
  return { quantity: quantity === null ? null : countText(quantity, locale), by, atMost, unknown };
}

/** So much of a lot in one place, for reading; placeId null: on site, not stored. */
export type LyingText = Readonly<{ placeId: string | null; quantity: string; exact: string }>;

/** Where the units of a lot lie, for reading. Rounds: to 0.001. */
export function lyingTexts(
  lying: readonly Readonly<{ placeId: string | null; quantity: Decimal }>[],
  locale: string,
): LyingText[] {
  return lying
    .filter(({ quantity }) => !quantity.isZero())
    .map(({ placeId, quantity }) => ({
      placeId,
      quantity: quantityText(quantity, locale),
      exact: quantity.toFixed(),
    }));
}
