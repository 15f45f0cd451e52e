import * as z from "zod";
import { amount, choice, day, fields, note } from "../entry-fields.ts";
import { DEPOSIT_EVENT_KINDS } from "./deposit-events.ts";

const MOST_DEPOSITS = 20;

/** What became of a deposit: which of the bill's (0 for its first), so much of it given back or forfeited on a day. Faults: not-there (deposit). */
export const depositEventEntry = fields({
  deposit: z
    .int({ error: "not-there" })
    .min(0, "not-there")
    .max(MOST_DEPOSITS - 1, "not-there"),
  kind: choice(DEPOSIT_EVENT_KINDS),
  amount: amount(),
  on: day(),
  note: note().nullable().default(null),
});
export type DepositEventEntry = z.output<typeof depositEventEntry>;
