"use client";

import type { TrendRow } from "../../../lib/show/trend-chart.ts";
import style from "./trend.module.css";

type TipProps = Readonly<{ active?: boolean; payload?: readonly Readonly<{ payload?: TrendRow }>[] }>;

/** What was seen and bought on one day, in words. */
export function TrendTip({ active, payload }: TipProps) {
  const row = payload?.find((entry) => entry.payload !== undefined)?.payload;
  if (!active || row === undefined) return null;
  return (
    <div className={style.tip}>
      <strong>{row.day}</strong>
      <ul>
        {row.says.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </div>
  );
}
