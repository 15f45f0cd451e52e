import type { TrendChart } from "../../../lib/show/trend-chart.ts";
import { DRAWING, trendDrawing } from "../../../lib/show/trend-drawing.ts";
import style from "./trend.module.css";
import { lookOf } from "./trend-look.ts";
import { LotMark, PaidMark, ShelfMark, SpecialMark } from "./trend-marks.tsx";

/** The trend as a still drawing: for print, and until (or without) the chart that answers to a finger. */
export function TrendStill({ chart, label }: Readonly<{ chart: TrendChart; label: string }>) {
  const drawing = trendDrawing(chart);
  const key = ({ x, y }: Readonly<{ x: string; y: string }>) => `${x} ${y}`;
  return (
    <svg
      viewBox={`0 0 ${DRAWING.width} ${DRAWING.height}`}
      role="img"
      aria-label={label}
      className={style.svg}
    >
      {drawing.grid.map(({ x, y, label: figure }) => (
        <g key={y}>
          <path d={`M${DRAWING.left} ${y}H${DRAWING.width - DRAWING.right}`} stroke="var(--rule)" />
          <text x={x} y={y} dy="4" textAnchor="end" className={style.figure}>
            {figure}
          </text>
        </g>
      ))}
      {drawing.ticks.map(({ x, y, label: month }) => (
        <text key={x} x={x} y={y} textAnchor="middle" className={style.figure}>
          {month}
        </text>
      ))}
      {drawing.lines.map((line, index) => {
        const { colour, dash } = lookOf(index);
        return (
          <g key={line.storeId}>
            <path d={line.path} fill="none" stroke={colour} strokeWidth="2" strokeDasharray={dash} />
            {line.circles.map((at) => (
              <ShelfMark key={key(at)} {...at} colour={colour} />
            ))}
            {line.squares.map((at) => (
              <SpecialMark key={key(at)} {...at} colour={colour} />
            ))}
            {line.crosses.map((at) => (
              <PaidMark key={key(at)} {...at} colour={colour} />
            ))}
            <text {...line.label} dy="4" className={style.name}>
              {line.name}
            </text>
          </g>
        );
      })}
      {drawing.lots.map((lot) => (
        <LotMark key={key(lot)} {...lot} />
      ))}
    </svg>
  );
}
