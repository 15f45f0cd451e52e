import { type LocalDate, localDate } from "../calendar/local-date.ts";
import { Decimal, decimal, ONE } from "../decimal.ts";

/** Steps between ticks that people read without thinking, times a power of ten. */
const STEPS = ["1", "2", "2.5", "5", "10"].map((step) => decimal(step));
const ROOM = decimal("0.02");

/**
 * Ticks of an axis that holds every value with a little room, evenly spaced at 1, 2, 2.5 or 5 times a power of ten; the
 * first and the last tick are the ends of the axis. Units: the values' own. Rounds: outwards to whole steps. Below zero
 * only when a value is. values: at least one.
 */
export function valueTicks(values: readonly Decimal[], wanted = 5): Decimal[] {
  const low = Decimal.min(...values);
  const high = Decimal.max(...values);
  const span = high.minus(low);
  const spread = span.isZero() ? Decimal.max(high.abs().times("0.1"), "0.01") : span;
  const least = spread.dividedBy(wanted - 1);
  const power = decimal(10).pow(Math.floor(Number(least.log(10))));
  const step =
    STEPS.find((one) => one.times(power).greaterThanOrEqualTo(least))?.times(power) ?? power.times(10);
  const room = spread.times(ROOM);
  const below = low.minus(room).dividedBy(step).floor().times(step);
  const first = below.isNegative() && !low.isNegative() ? decimal(0) : below;
  const last = high.plus(room).dividedBy(step).ceil().times(step);
  const count = last.minus(first).dividedBy(step).toNumber();
  return Array.from({ length: count + 1 }, (_, index) => first.plus(step.times(index)));
}

const MONTHS = [1, 2, 3, 6, 12, 24, 36, 60, 120];

/** The first day of a month, so many months after January of year 0. */
function monthStart(month: number): LocalDate {
  const year = String(Math.floor(month / 12)).padStart(4, "0");
  return localDate(`${year}-${String((month % 12) + 1).padStart(2, "0")}-01`);
}

function monthOf(day: LocalDate): number {
  const [year = 0, month = 1] = day.split("-").map(Number);
  return year * 12 + month - 1;
}

/** First days of months between two days, at most `most` of them, every 1, 2, 3, 6 or 12 months, or every few years. */
export function monthTicks(from: LocalDate, until: LocalDate, most = 5): LocalDate[] {
  const last = monthOf(until);
  for (const every of MONTHS) {
    const first = Math.ceil(monthOf(from) / every) * every;
    const days: LocalDate[] = [];
    for (let month = first; month <= last; month += every) days.push(monthStart(month));
    const within = days.filter((day) => day >= from && day <= until);
    if (within.length <= most) return within;
  }
  return [];
}

/** How far up an axis a value stands: 0 at its first tick, 1 at its last. */
export function placeOn(ticks: readonly Decimal[], value: Decimal): Decimal {
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (first === undefined || last === undefined || first.equals(last)) return ONE.dividedBy(2);
  return value.minus(first).dividedBy(last.minus(first));
}

/** The value at a place on an axis, the other way round: 0 is its first tick, 1 its last. Rounds: to float64, for drawing. */
export function valueAt(ticks: readonly Decimal[], place: number): number {
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (first === undefined || last === undefined) return place;
  return last.minus(first).times(place).plus(first).toNumber();
}
