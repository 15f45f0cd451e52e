import { BASKET_DRAWING, type BasketDrawing } from "../../../lib/show/basket-drawing.ts";
import style from "./basket.module.css";

const { width, height, left, right } = BASKET_DRAWING;

/** The index as a line, drawn on the server; what it shows stands in words and in the table too. */
export function BasketLine({
  line,
  label,
  note,
}: Readonly<{ line: BasketDrawing; label: string; note: string }>) {
  return (
    <figure className={style.sheet}>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label} className={style.line}>
        {line.grid.map(({ y, label: level, base }) => (
          <g key={y}>
            <path d={`M${left} ${y}H${width - right}`} stroke={base ? "var(--rule-strong)" : "var(--rule)"} />
            <text x={left - 6} y={y} dy="4" textAnchor="end">
              {level}
            </text>
          </g>
        ))}
        <text x={left} y={height - 6}>
          {line.ends[0]}
        </text>
        <text x={width - right} y={height - 6} textAnchor="end">
          {line.ends[1]}
        </text>
        <path d={line.path} className={style.way} />
        <circle cx={line.last.x} cy={line.last.y} r="3.5" className={style.last} />
      </svg>
      <figcaption>{note}</figcaption>
    </figure>
  );
}
