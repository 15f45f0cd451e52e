import { SPARK } from "../../lib/show/material-rows.ts";
import type { Sparkline } from "../../lib/show/sparkline.ts";
import style from "./materials.module.css";

/** A small line of one store's prices, drawn on the server. What it shows stands in words beside it. */
export function Spark({ line }: Readonly<{ line: Sparkline }>) {
  return (
    <svg
      className={style.spark}
      viewBox={`0 0 ${SPARK.width} ${SPARK.height}`}
      width={SPARK.width}
      height={SPARK.height}
      aria-hidden="true"
    >
      <path d={line.path} />
      <circle cx={line.lastX} cy={line.lastY} r="2.5" />
    </svg>
  );
}
