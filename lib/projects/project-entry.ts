import type * as z from "zod";
import { amount, choice, day, fields, name, note } from "../entry-fields.ts";
import { PROJECT_STATUSES } from "./project.ts";

const shape = {
  name: name(),
  status: choice(PROJECT_STATUSES),
  statusFrom: day().nullable(),
  budget: amount().nullable(),
  note: note().nullable(),
};

/** A new project. budget: home currency, all in. statusFrom null: the status holds from the day it is entered. */
export const projectEntry = fields({
  ...shape,
  status: shape.status.default("planned"),
  statusFrom: shape.statusFrom.default(null),
  budget: shape.budget.default(null),
  note: shape.note.default(null),
});
export type ProjectEntry = z.output<typeof projectEntry>;

/** Changed fields of a project. A status is dated: it holds from statusFrom, or from today (R11). */
export const projectPatch = fields(shape).partial();
export type ProjectPatch = z.output<typeof projectPatch>;
