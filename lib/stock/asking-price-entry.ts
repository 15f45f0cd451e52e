import type * as z from "zod";
import { amount, currency, day, fields, note } from "../entry-fields.ts";

/** What is asked for one purchase unit of a lot from a day on; amount null: no longer for sale. */
export const askingPriceEntry = fields({
  amount: amount().nullable(),
  currency: currency(),
  since: day(),
  note: note().nullable().default(null),
});
export type AskingPriceEntry = z.output<typeof askingPriceEntry>;
