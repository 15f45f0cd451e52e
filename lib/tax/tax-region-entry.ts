import * as z from "zod";
import {
  day,
  FIRST_DAY,
  fields,
  flag,
  inOrder,
  listOf,
  name,
  note,
  percent,
  withRules,
} from "../entry-fields.ts";
import type { TaxRegion } from "./region.ts";

/** A region's code, e.g. "CA-NS", in capitals. Errors: missing, not-text, unknown-region. Whether it exists is asked where regions are known. */
export function regionCode() {
  return name()
    .transform((text) => text.toUpperCase())
    .refine((code) => /^[A-Z0-9][A-Z0-9-]{1,19}$/.test(code), { error: "unknown-region" })
    .meta({ examples: ["CA-NS"] });
}

const component = withRules(
  fields({
    name: name(),
    ratePercent: percent(),
    from: day(),
    until: day().nullable().default(null),
    base: z.enum(["price", "price-plus-other-tax"], "unknown-choice").default("price"),
    recoverable: flag().default(false),
    evidence: note().default("entered in this workspace"),
  }),
  [inOrder("from", "until")],
).transform((entry) => ({ ...entry, fromMemory: false }));

const COUNTRY = /^[A-Z]{2}(?=-|$)/;

/**
 * A tax region the workspace defines. country: the first two letters of an ISO 3166-2 code when left out; it tells
 * which stores are foreign. completeFrom: the first day of its first component when left out; before it tax is not
 * known (R3). No components: no tax.
 */
export const taxRegionEntry = fields({
  code: regionCode(),
  name: name().optional(),
  country: regionCode().nullable().optional(),
  completeFrom: day().optional(),
  components: listOf(component),
}).transform(({ code, name: called, country, completeFrom, components }): TaxRegion => {
  const first = components.map((one) => one.from).sort()[0];
  return {
    code,
    name: called ?? code,
    country: country === undefined ? (COUNTRY.exec(code)?.[0] ?? null) : country,
    completeFrom: completeFrom ?? first ?? FIRST_DAY,
    components,
  };
});
export type TaxRegionEntry = z.output<typeof taxRegionEntry>;
