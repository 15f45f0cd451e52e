import { daysBetween } from "../calendar/local-date.ts";
import { decimal, HUNDRED } from "../decimal.ts";
import type { BasketPoint, ProjectBasket } from "../exposure/basket.ts";
import { placeOn, valueTicks } from "./axis.ts";
import { dayText } from "./day-text.ts";
import { figureText } from "./money-text.ts";

/** The box of the drawing and the room at its edges. Units: its own. */
export const BASKET_DRAWING = { width: 360, height: 168, left: 44, right: 12, top: 12, bottom: 24 } as const;
const MOST_PLACES = 2;
const TICKS = 4;

/** Text places for an SVG. grid: one line per step of the index, the base's marked. ends: names of the first and last day. */
export type BasketDrawing = Readonly<{
  path: string;
  last: Readonly<{ x: string; y: string }>;
  grid: readonly Readonly<{ y: string; label: string; base: boolean }>[];
  ends: readonly [string, string];
}>;

/**
 * The index as a line over the days that rest on every material the base day has; where a day lacks one the line is
 * broken, since a level over other materials is no step of this one. Units: the box's own, rounded to a tenth.
 * null: fewer than two such days.
 */
export function basketDrawing(basket: ProjectBasket, locale: string): BasketDrawing | null {
  const most = basket.points[0]?.index.coverage.known.length ?? 0;
  const levelOn = ({ index }: BasketPoint) =>
    index.known && index.coverage.known.length === most ? index.level.level : null;
  const levels = basket.points.flatMap((point) => levelOn(point) ?? []);
  if (levels.length < 2) return null;
  const { width, height, left, right, top, bottom } = BASKET_DRAWING;
  const ticks = valueTicks([...levels, HUNDRED], TICKS);
  const span = daysBetween(basket.base, basket.day);
  const y = (level: (typeof levels)[number]) =>
    decimal(height - bottom)
      .minus(placeOn(ticks, level).times(height - top - bottom))
      .toFixed(1);
  const x = (point: BasketPoint) =>
    decimal(daysBetween(basket.base, point.day))
      .dividedBy(span)
      .times(width - left - right)
      .plus(left)
      .toFixed(1);
  let path = "";
  let drawn = false;
  let last = { x: "", y: "" };
  for (const point of basket.points) {
    const level = levelOn(point);
    if (level !== null) {
      last = { x: x(point), y: y(level) };
      path += `${drawn ? "L" : "M"}${last.x} ${last.y}`;
    }
    drawn = level !== null;
  }
  return {
    path,
    last,
    grid: ticks.map((tick) => ({
      y: y(tick),
      label: figureText(tick, locale, 0, MOST_PLACES),
      base: tick.equals(HUNDRED),
    })),
    ends: [dayText(basket.base, locale), dayText(basket.day, locale)],
  };
}
