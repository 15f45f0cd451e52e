import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { Decimal, decimal, ZERO } from "../decimal.ts";
import type { SavedBy } from "../savings/savings-through-time.ts";
import type { HeldOn } from "../savings/unrealised-through-time.ts";
import { monthTicks, placeOn, valueTicks } from "./axis.ts";
import { figureText } from "./money-text.ts";
import { monthOfYearText } from "./month-of-year-text.ts";

/** The box of a drawing and the room at its edges, and how many figures stand along it. Units: its own. */
export type DrawingBox = Readonly<{
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
  months: number;
}>;
/** For a page and for paper; and for a phone, where letters must not shrink. */
export const WIDE_BOX: DrawingBox = {
  width: 720,
  height: 300,
  left: 64,
  right: 16,
  top: 12,
  bottom: 28,
  months: 8,
};
export const NARROW_BOX: DrawingBox = {
  width: 340,
  height: 240,
  left: 50,
  right: 10,
  top: 12,
  bottom: 26,
  months: 4,
};

type Place = Readonly<{ x: string; y: string }>;
/**
 * Savings through time as text places for any drawing. zero: where nothing is. saved, lost: closed shapes standing on it
 * and hanging from it. net: realised, as steps. held: net and what is unrealised together, marked at some days.
 */
export type SavingsDrawing = Readonly<{
  box: DrawingBox;
  zero: string;
  grid: readonly Readonly<{ y: string; label: string }>[];
  months: readonly Readonly<{ x: string; label: string }>[];
  saved: string;
  lost: string;
  net: string;
  held: string;
  marks: readonly Place[];
  end: Place;
}>;

const TICKS = 5;

/** What is realised by the end of a day: the last point on or before it. */
function netOn(points: readonly SavedBy[], on: LocalDate): Decimal {
  return points.findLast((point) => point.on <= on)?.net.amount ?? ZERO;
}

/**
 * The picture of a report: what was saved above the line, what was lost below it, both heaped up, the realised sum of the
 * two, and with it what is held. The same places are drawn on a page, on paper and in a file. until: the last day.
 * Units: the box's own, rounded to a tenth. null: nothing is known yet.
 */
export function savingsDrawing(
  points: readonly SavedBy[],
  marks: readonly HeldOn[],
  until: LocalDate,
  box: DrawingBox,
  locale: string,
): SavingsDrawing | null {
  const told = marks.filter(({ unrealised, notKnown }) => notKnown === 0 || !unrealised.amount.isZero());
  const first = [points[0]?.on, told[0]?.on].filter((day) => day !== undefined).sort()[0];
  if (first === undefined) return null;
  const withHeld = told.map(({ on, unrealised }) => ({
    on,
    value: netOn(points, on).plus(unrealised.amount),
  }));
  const ticks = valueTicks(
    [
      ZERO,
      ...points.flatMap(({ saved, lost }) => [saved.amount, lost.amount]),
      ...withHeld.map(({ value }) => value),
    ],
    TICKS,
  );
  const span = Decimal.max(daysBetween(first, until), 1);
  const [across, down] = [box.width - box.left - box.right, box.height - box.top - box.bottom];
  const x = (day: LocalDate) =>
    decimal(daysBetween(first, day)).dividedBy(span).times(across).plus(box.left).toFixed(1);
  const y = (value: Decimal) =>
    decimal(box.height - box.bottom)
      .minus(placeOn(ticks, value).times(down))
      .toFixed(1);
  const zero = y(ZERO);
  const steps = (of: (point: SavedBy) => Decimal) =>
    [...points.map((point) => `H${x(point.on)}V${y(of(point))}`), `H${x(until)}`].join("");
  const start = `M${x(first)} ${zero}`;
  const places = withHeld.map(({ on, value }) => ({ x: x(on), y: y(value) }));
  const whole = ticks.every((tick) => tick.isInteger());
  return {
    box,
    zero,
    grid: ticks.map((tick) => ({
      y: y(tick),
      label: figureText(tick, locale, whole ? 0 : 2, whole ? 0 : 2),
    })),
    months: monthTicks(first, until, box.months).map((day) => ({
      x: x(day),
      label: monthOfYearText(day, locale),
    })),
    saved: `${start}${steps(({ saved }) => saved.amount)}V${zero}Z`,
    lost: `${start}${steps(({ lost }) => lost.amount)}V${zero}Z`,
    net: `${start}${steps(({ net }) => net.amount)}`,
    held: places.map((place, index) => `${index === 0 ? "M" : "L"}${place.x} ${place.y}`).join(""),
    marks: places,
    end: { x: x(until), y: y(netOn(points, until)) },
  };
}
