import * as z from "zod";
import { currency, day, days, fields, inOrder, listOf, name, percent, withRules } from "../entry-fields.ts";
import type { Registration } from "./region.ts";
import { regionCode } from "./tax-region-entry.ts";

/** "HST", or { tax, from?, until? }. Open ends are null. */
const registration = z
  .preprocess(
    (given) => (typeof given === "string" ? { tax: given } : given),
    withRules(
      fields({ tax: name(), from: day().nullable().default(null), until: day().nullable().default(null) }),
      [inOrder("from", "until")],
    ),
  )
  .transform((entry): Registration => entry);

/** "7", or { percent, from? }. from null: from the beginning when it is the first, else from today. */
const moneyRate = z.preprocess(
  (given) => (typeof given === "string" ? { percent: given } : given),
  fields({ percent: percent(), from: day().nullable().default(null) }),
);

/** True for a zone the runtime knows (IANA). */
function isTimeZone(text: string): boolean {
  try {
    return new Intl.DateTimeFormat("en-CA", { timeZone: text }) !== null;
  } catch {
    return false;
  }
}

/** Changed settings of a workspace. moneyRate null takes every money rate away. rateSources: one source of exchange rates per currency (R2). */
export const workspaceEntry = fields({
  name: name(),
  homeCurrency: currency(),
  taxRegion: regionCode(),
  registeredFor: listOf(registration),
  moneyRate: moneyRate.nullable(),
  recheckDays: days(),
  timeZone: name().refine(isTimeZone, { error: "unknown-time-zone" }),
  rateSources: z.record(currency(), name(), { error: "not-an-object" }),
}).partial();
export type WorkspaceEntry = z.output<typeof workspaceEntry>;
