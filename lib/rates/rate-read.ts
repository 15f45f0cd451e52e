import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { FIRST_DAY, rate as rateField } from "../entry-fields.ts";
import { type FaultCode, faultsOf } from "../fault.ts";
import { type Reading, read, refused, skipped } from "../files/reading.ts";
import { type CurrencyCode, isCurrencyCode } from "../money/currencies.ts";

/** A rate as a file has it: 1 base = rate quote. */
export type RateRead = Readonly<{ on: LocalDate; base: CurrencyCode; quote: CurrencyCode; rate: Decimal }>;

/** currencies: pairs of these are taken, all others passed over; null: every pair. */
export type RatesAsked = Readonly<{ currencies: ReadonlySet<string> | null }>;

const FIELD = rateField();

function codeOf(rate: Decimal): FaultCode | null {
  const parsed = FIELD.safeParse(rate.toFixed());
  return parsed.success ? null : (faultsOf(parsed.error)[0]?.code ?? "not-a-number");
}

/** A figure as the rate of a pair: passed over when not asked for or before the first day, refused when it can be no rate. */
export function rateRead(
  at: Readonly<{ row: number; column: string; text: string }>,
  { on, base, quote, rate }: Readonly<{ on: LocalDate; base: string; quote: string; rate: Decimal }>,
  { currencies }: RatesAsked,
): Reading<RateRead> {
  if (currencies !== null && !(currencies.has(base) && currencies.has(quote)))
    return skipped(at, "not-asked-for");
  if (!isCurrencyCode(base) || !isCurrencyCode(quote)) return refused(at, "unknown-currency");
  if (base === quote) return refused(at, "same-currency");
  if (on < FIRST_DAY) return skipped(at, "too-early");
  const code = codeOf(rate);
  return code === null ? read(at, { on, base, quote, rate }) : refused(at, code);
}
