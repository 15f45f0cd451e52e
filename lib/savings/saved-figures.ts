import * as z from "zod";
import { MINOR_UNITS } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { ReportContent } from "./report-content.ts";
import { savingsReport } from "./savings-report.ts";

const figures = z.strictObject({
  currency: z.string(),
  realised: z.string(),
  strict: z.string(),
  unrealised: z.string(),
  rows: z.int(),
  notKnown: z.int(),
});
/** A report's headline as text, beside the whole of it: decimal digits to the minor unit. */
export type SavedFigures = Readonly<z.output<typeof figures>>;

/** The headline of a report. Rounds: nothing further. */
export function savedFigures({ rows, currency }: ReportContent): SavedFigures {
  const { realised, unrealised } = savingsReport(rows, currency);
  const digits = (value: Money) => value.amount.toFixed(MINOR_UNITS[currency]);
  return {
    currency,
    realised: digits(realised.saving),
    strict: digits(realised.strictSaving),
    unrealised: digits(unrealised.saving),
    rows: rows.length,
    notKnown: realised.notKnown + unrealised.notKnown,
  };
}

/** A stored headline. @throws {z.ZodError} when it is something else. */
export function figuresOfStored(stored: unknown): SavedFigures {
  return figures.parse(stored);
}
