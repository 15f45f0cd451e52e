import { useId } from "react";
import type { SavingsDrawing } from "../../../lib/show/savings-drawing.ts";
import style from "./picture.module.css";

type DrawingProps = Readonly<{ drawing: SavingsDrawing; title: string; text: string; className?: string }>;

/** Savings through time: places come from `savingsDrawing`, colours from the look, a pattern and a dash tell them apart too. */
export function Drawing({ drawing, title, text, className }: DrawingProps) {
  const id = useId();
  const { box, zero, grid, months, saved, lost, net, held, marks, end } = drawing;
  const across = `M${box.left} `;
  return (
    <svg
      viewBox={`0 0 ${box.width} ${box.height}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-text`}
      className={`${style.drawing} ${className ?? ""}`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-text`}>{text}</desc>
      <defs>
        <pattern id={`${id}-hatch`} width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M0 6L6 0" className={style.hatch} />
        </pattern>
      </defs>
      {grid.map(({ y, label }) => (
        <g key={y}>
          <path d={`${across}${y}H${box.width - box.right}`} className={style.rule} />
          <text x={box.left - 8} y={y} dy="4" textAnchor="end">
            {label}
          </text>
        </g>
      ))}
      {months.map(({ x, label }) => (
        <g key={x}>
          <path d={`M${x} ${box.height - box.bottom}v5`} className={style.rule} />
          <text x={x} y={box.height - 6} textAnchor="middle">
            {label}
          </text>
        </g>
      ))}
      <path d={saved} className={style.saved} />
      <path d={lost} fill={`url(#${id}-hatch)`} className={style.lost} />
      <path d={`${across}${zero}H${box.width - box.right}`} className={style.zero} />
      <path d={held} className={style.held} />
      {marks.map(({ x, y }) => (
        <circle key={x} cx={x} cy={y} r="3" className={style.mark} />
      ))}
      <path d={net} className={style.net} />
      <circle cx={end.x} cy={end.y} r="4" className={style.end} />
    </svg>
  );
}
