"use client";

import dynamic from "next/dynamic";
import { type ReactNode, useCallback, useState } from "react";
import type { TrendChart } from "../../../lib/show/trend-chart.ts";
import style from "./trend.module.css";

const TrendPlot = dynamic(() => import("./trend-plot.client.tsx"), { ssr: false });

/** The chart, in the place of the still drawing as soon as it is there; nothing jumps. */
export function TrendFigure({
  chart,
  still,
  label,
}: Readonly<{ chart: TrendChart; still: ReactNode; label: string }>) {
  const [drawn, setDrawn] = useState(false);
  const onDrawn = useCallback(() => setDrawn(true), []);
  return (
    <div className={style.plot}>
      <div
        className={drawn ? style.stillBehind : style.still}
        aria-hidden={drawn}
        tabIndex={drawn ? undefined : 0}
      >
        {still}
      </div>
      <div className={style.live}>
        <TrendPlot chart={chart} label={label} onDrawn={onDrawn} />
      </div>
    </div>
  );
}
