import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { Decimal, decimal, ONE } from "../decimal.ts";

/** A value of a day, e.g. a price. */
export type DayValue = Readonly<{ on: LocalDate; value: Decimal }>;
/** An SVG path in a box `width` x `height`, and where it ends. */
export type Sparkline = Readonly<{ path: string; lastX: string; lastY: string }>;

const EDGE = 3;

/**
 * A small line through values over time, the oldest at the left edge, the highest at the top; level when all are equal.
 * Units: the box's own, rounded to a tenth, for drawing. null: fewer than two days, nothing to draw.
 */
export function sparkline(values: readonly DayValue[], width: number, height: number): Sparkline | null {
  const sorted = [...values].sort((a, b) => a.on.localeCompare(b.on));
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined || first.on === last.on) return null;
  const span = daysBetween(first.on, last.on);
  const high = Decimal.max(...sorted.map(({ value }) => value));
  const low = Decimal.min(...sorted.map(({ value }) => value));
  const range = high.minus(low);
  const at = ({ on, value }: DayValue): readonly [string, string] => {
    const x = decimal(daysBetween(first.on, on))
      .dividedBy(span)
      .times(width - 2 * EDGE)
      .plus(EDGE);
    const down = range.isZero() ? decimal("0.5") : ONE.minus(value.minus(low).dividedBy(range));
    return [
      x.toFixed(1),
      down
        .times(height - 2 * EDGE)
        .plus(EDGE)
        .toFixed(1),
    ];
  };
  const [lastX, lastY] = at(last);
  return { path: `M${sorted.map((one) => at(one).join(" ")).join("L")}`, lastX, lastY };
}
