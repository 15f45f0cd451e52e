import type * as z from "zod";
import { fields, name } from "../entry-fields.ts";

/** An index as it is entered. series: its name at the publisher's, e.g. WPU0811; base: what stands at 100, e.g. "1982 = 100". */
export const referenceIndexEntry = fields({
  name: name(),
  series: name(),
  publisher: name(),
  base: name().optional(),
});
export type ReferenceIndexEntry = z.output<typeof referenceIndexEntry>;
