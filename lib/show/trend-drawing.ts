import type { TrendChart } from "./trend-chart.ts";

/** The box of the still drawing, and the room for figures at its edges. Units: its own. */
export const DRAWING = { width: 720, height: 320, left: 64, right: 176, top: 12, bottom: 28 } as const;

type Place = Readonly<{ x: string; y: string }>;
/** A still drawing of a trend, for print and for browsers without scripts: paths and places as text. */
export type TrendDrawing = Readonly<{
  lines: readonly Readonly<{
    storeId: string;
    name: string;
    path: string;
    circles: readonly Place[];
    squares: readonly Place[];
    crosses: readonly Place[];
    label: Place;
  }>[];
  lots: readonly (Place & Readonly<{ letters: string }>)[];
  grid: readonly (Place & Readonly<{ label: string }>)[];
  ticks: readonly (Place & Readonly<{ label: string }>)[];
}>;

/**
 * A trend drawn into a box: a store's shelf prices as steps (a price holds until the next one is seen). Units: the box's
 * own, rounded to a tenth, for drawing.
 */
export function trendDrawing(chart: TrendChart): TrendDrawing {
  const [from, until] = chart.days;
  const low = chart.valueTicks[0]?.at ?? 0;
  const high = chart.valueTicks.at(-1)?.at ?? 1;
  const right = DRAWING.width - DRAWING.right;
  const bottom = DRAWING.height - DRAWING.bottom;
  const across = (t: number) =>
    (DRAWING.left + ((t - from) / Math.max(until - from, 1)) * (right - DRAWING.left)).toFixed(1);
  const at = (value: number) => (bottom - ((value - low) / (high - low)) * (bottom - DRAWING.top)).toFixed(1);
  const placesOf = (key: string): Place[] =>
    chart.rows.flatMap(({ t, values }) => {
      const value = values[key];
      return value === undefined ? [] : [{ x: across(t), y: at(value) }];
    });
  return {
    lines: chart.lines.map(({ storeId, name, label }, index) => {
      const circles = placesOf(`shelf ${index}`);
      const [first, ...rest] = circles;
      const path =
        first === undefined ? "" : `M${first.x} ${first.y}${rest.map(({ x, y }) => `H${x}V${y}`).join("")}`;
      return {
        storeId,
        name,
        path,
        circles,
        squares: placesOf(`special ${index}`),
        crosses: placesOf(`paid ${index}`),
        label: { x: (right + 10).toFixed(1), y: at(label) },
      };
    }),
    lots: chart.rows.flatMap(({ t, values, letters }) =>
      values.lot === undefined ? [] : [{ x: across(t), y: at(values.lot), letters }],
    ),
    grid: chart.valueTicks.map(({ at: value, label }) => ({
      x: (DRAWING.left - 8).toFixed(1),
      y: at(value),
      label,
    })),
    ticks: chart.dayTicks.map(({ at: t, label }) => ({ x: across(t), y: (bottom + 20).toFixed(1), label })),
  };
}
