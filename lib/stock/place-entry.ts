import type * as z from "zod";
import { fields, flag, name, note, quantity, size } from "../entry-fields.ts";
import { type Dimension, type Quantity, UNITS } from "../measure/units.ts";

/** A limit in units of one dimension, e.g. "120 sq ft". Errors: those of a size; unit-not-convertible. */
function limit(dimension: Dimension) {
  return size().refine((given: Quantity) => UNITS[given.unit].dimension === dimension, {
    error: "unit-not-convertible",
  });
}

const shape = {
  name: name(),
  note: note().nullable(),
  area: limit("area").nullable(),
  volume: limit("volume").nullable(),
  weight: limit("mass").nullable(),
  count: quantity().nullable(),
  covered: flag().nullable(),
  ventilated: flag().nullable(),
};

/** A new place; limits as "value unit". Faults: those of the fields. */
export const placeEntry = fields({
  name: shape.name,
  note: shape.note.default(null),
  area: shape.area.default(null),
  volume: shape.volume.default(null),
  weight: shape.weight.default(null),
  count: shape.count.default(null),
  covered: shape.covered.default(null),
  ventilated: shape.ventilated.default(null),
});
export type PlaceEntry = z.output<typeof placeEntry>;

/** Changed fields of a place; null takes a limit away. */
export const placePatch = fields(shape).partial();
export type PlacePatch = z.output<typeof placePatch>;
