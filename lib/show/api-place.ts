import * as z from "zod";
import { type Decimal, roundHalfUp } from "../decimal.ts";
import type { Quantity } from "../measure/units.ts";
import { type Load, loadWeight } from "../stock/load-weight.ts";
import { type Place, SPACE_MEASURES } from "../stock/place.ts";
import { type Fits, roomOf } from "../stock/place-room.ts";
import { SPACE_UNITS } from "../stock/space-of.ts";
import { dayShape, decimalShape, exactDigits, exactDigitsOrNull } from "./api-fields.ts";

const sizeShape = z.string().nullable().describe('"value unit"; null: no limit said');

export const placeShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  note: z.string().nullable(),
  area: sizeShape,
  volume: sizeShape,
  weight: sizeShape,
  count: decimalShape.nullable(),
  covered: z.boolean().nullable(),
  ventilated: z.boolean().nullable(),
  archivedOn: dayShape.nullable(),
});

function sizeText(size: Quantity | null): string | null {
  return size === null ? null : `${exactDigits(size.value)} ${size.unit}`;
}

/** A place as it is kept. Rounds: never. */
export function apiPlace(place: Place): z.output<typeof placeShape> {
  const { area, volume, weight, count, ...plain } = place;
  return {
    ...plain,
    area: sizeText(area),
    volume: sizeText(volume),
    weight: sizeText(weight),
    count: exactDigitsOrNull(count),
  };
}

const measured = z.strictObject({
  measure: z.enum(SPACE_MEASURES),
  unit: z.string(),
  limit: decimalShape.nullable(),
  used: decimalShape.describe("at least, where something is unknown"),
  free: decimalShape.nullable(),
  unknown: z
    .array(z.string())
    .describe("materials lying there whose size is not known; never taken for zero"),
});

export const placeContentsShape = z.strictObject({
  ...placeShape.shape,
  lying: z.array(z.strictObject({ lotId: z.string(), materialId: z.string(), quantity: decimalShape })),
  room: z.array(measured),
  weighs: z.strictObject({
    kilograms: decimalShape,
    parts: z.array(
      z.strictObject({
        materialId: z.string(),
        quantity: decimalShape,
        kilograms: decimalShape,
        bySize: z.boolean().describe("worked out from size and density"),
        source: z.string().nullable(),
      }),
    ),
    unknown: z.array(z.string()),
  }),
});

const READING_PLACES = 6;

/** For reading: 6 places, without trailing zeros. */
function reading(value: Decimal): string {
  return roundHalfUp(value, READING_PLACES).toFixed();
}

/** A place with what lies in it, how full it is and what that weighs. Rounds: sizes to 6 places for reading. */
export function apiPlaceContents(
  place: Place,
  loads: readonly (Load & { lotId: string })[],
): z.output<typeof placeContentsShape> {
  const { kilograms, parts, unknown } = loadWeight(loads);
  return {
    ...apiPlace(place),
    lying: loads.map(({ lotId, material, quantity }) => ({
      lotId,
      materialId: material.id,
      quantity: exactDigits(quantity),
    })),
    room: roomOf(place, loads).map(({ measure, limit, used, free, unknown: who }) => ({
      measure,
      unit: SPACE_UNITS[measure],
      limit: limit === null ? null : reading(limit),
      used: reading(used),
      free: free === null ? null : reading(free),
      unknown: [...who],
    })),
    weighs: {
      kilograms: reading(kilograms),
      parts: parts.map((part) => ({
        materialId: part.materialId,
        quantity: exactDigits(part.quantity),
        kilograms: reading(part.kilograms),
        bySize: part.bySize,
        source: part.source,
      })),
      unknown: [...unknown],
    },
  };
}

export const fitsShape = z.strictObject({
  quantity: decimalShape.nullable().describe("more purchase units; null: no limit that can be reckoned"),
  by: z.enum(SPACE_MEASURES).nullable().describe("the limit that binds"),
  atMost: z.boolean().describe("something there has no known size"),
  unknown: z.array(z.enum(SPACE_MEASURES)).describe("limits this material's own size is not known for"),
});

/** How many more of a material fit. Rounds: never. */
export function apiFits({ quantity, by, atMost, unknown }: Fits): z.output<typeof fitsShape> {
  return { quantity: exactDigitsOrNull(quantity), by, atMost, unknown: [...unknown] };
}
