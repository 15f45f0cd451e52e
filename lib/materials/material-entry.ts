import * as z from "zod";
import { choice, days, fields, listOf, name, note, purchaseUnit, size } from "../entry-fields.ts";
import { CATEGORIES } from "./material.ts";

/** Sizes are "value unit"; pieces may be a bare count. */
const dimensions = fields({
  nominalThickness: size(),
  nominalWidth: size(),
  thickness: size(),
  width: size(),
  length: size(),
  faceWidth: size(),
  faceLength: size(),
  coverage: size(),
  pieces: z.preprocess(
    (given) => (typeof given === "string" && /^[\d.]+$/.test(given) ? `${given} piece` : given),
    size(),
  ),
  weight: size(),
}).partial();

const shape = {
  name: name(),
  category: choice(CATEGORIES),
  purchaseUnit: purchaseUnit(),
  dimensions,
  recheckDays: days().nullable(),
  exemptFrom: listOf(name()),
  note: note().nullable(),
};

/** A new material. recheckDays null: the workspace's. exemptFrom: names of tax components that do not apply (R3). */
export const materialEntry = fields({
  ...shape,
  dimensions: dimensions.default({}),
  recheckDays: shape.recheckDays.default(null),
  exemptFrom: shape.exemptFrom.default([]),
  note: shape.note.default(null),
});
export type MaterialEntry = z.output<typeof materialEntry>;

/** Changed fields of a material. dimensions are replaced as a whole. */
export const materialPatch = fields(shape).partial();
export type MaterialPatch = z.output<typeof materialPatch>;
