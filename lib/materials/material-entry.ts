import * as z from "zod";
import { choice, days, fields, listOf, name, note, purchaseUnit, size } from "../entry-fields.ts";
import { DOOR_KINDS, HANDS, TREATMENTS } from "./identity.ts";
import { CATEGORIES, FIGURE_NAMES, type FigureName } from "./material.ts";

/** A count of pieces as "21 pieces" or bare. */
function count() {
  return z.preprocess(
    (given) => (typeof given === "string" && /^[\d.]+$/.test(given) ? `${given} piece` : given),
    size(),
  );
}

/** Sizes are "value unit"; counts may be bare. */
const dimensions = fields({
  nominalThickness: size(),
  nominalWidth: size(),
  thickness: size(),
  width: size(),
  length: size(),
  faceWidth: size(),
  faceLength: size(),
  coverageWidth: size(),
  coverage: size(),
  coverageLength: size(),
  yield: size(),
  pieces: count(),
  perLift: count(),
  weight: size(),
  density: size(),
  jambDepth: size(),
}).partial();

const identity = fields({
  grade: name(),
  hand: choice(HANDS),
  doorKind: choice(DOOR_KINDS),
  treatment: choice(TREATMENTS),
}).partial();

const sources = fields(
  Object.fromEntries(FIGURE_NAMES.map((figure) => [figure, note()])) as Record<
    FigureName,
    ReturnType<typeof note>
  >,
).partial();

const shape = {
  name: name(),
  category: choice(CATEGORIES),
  purchaseUnit: purchaseUnit(),
  dimensions,
  identity,
  shelfLifeDays: days().nullable(),
  sources,
  recheckDays: days().nullable(),
  exemptFrom: listOf(name()),
  note: note().nullable(),
};

/**
 * A new material. recheckDays null: the workspace's. exemptFrom: names of tax components that do not apply (R3).
 * sources: where each figure was read.
 */
export const materialEntry = fields({
  ...shape,
  dimensions: dimensions.default({}),
  identity: identity.default({}),
  shelfLifeDays: shape.shelfLifeDays.default(null),
  sources: sources.default({}),
  recheckDays: shape.recheckDays.default(null),
  exemptFrom: shape.exemptFrom.default([]),
  note: shape.note.default(null),
});
export type MaterialEntry = z.output<typeof materialEntry>;

/** Changed fields of a material. dimensions, identity and sources are each replaced as a whole. */
export const materialPatch = fields(shape).partial();
export type MaterialPatch = z.output<typeof materialPatch>;
