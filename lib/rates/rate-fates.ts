import type { Decimal } from "../decimal.ts";
import type { Reading } from "../files/reading.ts";
import type { ExchangeRate } from "./exchange-rate.ts";
import type { RateRead } from "./rate-read.ts";

/** What taking in a rate does: it is new, it is there already, or another is there of its day, pair and source. */
export type RateFate = "new" | "same" | "conflict";
export type RateFated = Readonly<{
  reading: Reading<RateRead>;
  fate: RateFate | "skipped" | "refused";
  /** The rate a conflict stands against. */
  known: Decimal | null;
}>;

function keyOf({ on, base, quote }: Pick<RateRead, "on" | "base" | "quote">): string {
  return `${on} ${base} ${quote}`;
}

/**
 * The fate of every reading of a file, against the rates there are of the same source. Of two rows of one day and pair the
 * first counts. A day ahead of today is refused. Order: as in the file.
 */
export function rateFates(
  readings: readonly Reading<RateRead>[],
  stored: readonly ExchangeRate[],
  { source, today }: Readonly<{ source: string; today: string }>,
): RateFated[] {
  const known = new Map(
    stored.filter((one) => one.source === source).map((one) => [keyOf(one), one.rate] as const),
  );
  return readings.map((reading): RateFated => {
    if (reading.fate !== "accepted") return { reading, fate: reading.fate, known: null };
    const { value, row, column, text } = reading;
    if (value.on > today)
      return {
        reading: { row, column, text, fate: "refused", code: "day-ahead" },
        fate: "refused",
        known: null,
      };
    const key = keyOf(value);
    const there = known.get(key);
    if (there !== undefined)
      return there.equals(value.rate)
        ? { reading, fate: "same", known: null }
        : { reading, fate: "conflict", known: there };
    known.set(key, value.rate);
    return { reading, fate: "new", known: null };
  });
}
