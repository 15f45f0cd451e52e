"use client";

import { useEffect, useSyncExternalStore } from "react";
import { CartesianGrid, ComposedChart, Line, ReferenceDot, Tooltip, XAxis, YAxis } from "recharts";
import type { TrendChart, TrendRow } from "../../../lib/show/trend-chart.ts";
import style from "./trend.module.css";
import { lookOf } from "./trend-look.ts";
import { LotMark, PaidMark, ShelfMark, SpecialMark } from "./trend-marks.tsx";
import { TrendTip } from "./trend-tip.client.tsx";

const HEIGHT = 320;
const ROOM = "(min-width: 44rem)";

function listenToWidth(changed: () => void): () => void {
  const query = window.matchMedia(ROOM);
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}

type DotProps = Readonly<{ cx?: number; cy?: number; payload?: TrendRow; index: number }>;

/** The mark of one kind where a row has a value of it. */
function dotOf(key: string, mark: (x: number, y: number, row: TrendRow) => React.ReactElement) {
  return ({ cx, cy, payload, index }: DotProps) =>
    cx === undefined || typeof cy !== "number" || payload?.values[key] === undefined ? (
      <g key={`${key} ${index}`} />
    ) : (
      <g key={`${key} ${index}`}>{mark(cx, cy, payload)}</g>
    );
}

type TrendPlotProps = Readonly<{ chart: TrendChart; label: string; onDrawn: () => void }>;

/** A trend that answers to a finger or the arrow keys: what was seen on a day, in words. */
export default function TrendPlot({ chart, label, onDrawn }: TrendPlotProps) {
  const roomy = useSyncExternalStore(
    listenToWidth,
    () => window.matchMedia(ROOM).matches,
    () => true,
  );
  useEffect(onDrawn, [onDrawn]);
  const low = chart.valueTicks[0]?.at ?? 0;
  const high = chart.valueTicks.at(-1)?.at ?? 1;
  const figures = { fill: "var(--muted)", fontSize: 13, fontFamily: "var(--fig)" };
  const nameOf = (ticks: TrendChart["valueTicks"]) => (at: number) =>
    ticks.find((tick) => tick.at === at)?.label ?? "";
  return (
    <ComposedChart
      responsive
      width={640}
      height={HEIGHT}
      style={{ inlineSize: "100%", blockSize: HEIGHT }}
      data={[...chart.rows]}
      margin={{ top: 16, right: roomy ? 180 : 14, bottom: 0, left: 0 }}
      accessibilityLayer
      title={label}
      className={style.recharts}
    >
      <CartesianGrid vertical={false} stroke="var(--rule)" />
      <XAxis
        dataKey="t"
        type="number"
        domain={[...chart.days]}
        ticks={chart.dayTicks.map(({ at }) => at)}
        tickFormatter={nameOf(chart.dayTicks)}
        interval="preserveStartEnd"
        minTickGap={14}
        stroke="var(--rule-strong)"
        tick={figures}
      />
      <YAxis
        type="number"
        domain={[low, high]}
        ticks={chart.valueTicks.map(({ at }) => at)}
        tickFormatter={nameOf(chart.valueTicks)}
        interval={0}
        width={68}
        axisLine={false}
        tickLine={false}
        tick={figures}
      />
      <Tooltip content={TrendTip} isAnimationActive={false} cursor={{ stroke: "var(--rule-strong)" }} />
      {chart.lines.flatMap((line, index) => {
        const { colour, dash } = lookOf(index);
        const shared = { isAnimationActive: false, activeDot: false, legendType: "none" } as const;
        const valueAt = (key: string) => (row: TrendRow) => row.values[key];
        return [
          <Line
            {...shared}
            key={`shelf ${line.storeId}`}
            name={line.name}
            dataKey={valueAt(`shelf ${index}`)}
            type="stepAfter"
            connectNulls
            stroke={colour}
            strokeWidth={2}
            strokeDasharray={dash}
            dot={dotOf(`shelf ${index}`, (x, y) => <ShelfMark x={x} y={y} colour={colour} />)}
          />,
          <Line
            {...shared}
            key={`special ${line.storeId}`}
            dataKey={valueAt(`special ${index}`)}
            stroke="none"
            dot={dotOf(`special ${index}`, (x, y) => <SpecialMark x={x} y={y} colour={colour} />)}
          />,
          <Line
            {...shared}
            key={`paid ${line.storeId}`}
            dataKey={valueAt(`paid ${index}`)}
            stroke="none"
            dot={dotOf(`paid ${index}`, (x, y) => <PaidMark x={x} y={y} colour={colour} />)}
          />,
        ];
      })}
      <Line
        dataKey={(row: TrendRow) => row.values.lot}
        stroke="none"
        isAnimationActive={false}
        activeDot={false}
        dot={dotOf("lot", (x, y, row) => <LotMark x={x} y={y} letters={row.letters} />)}
      />
      {roomy
        ? chart.lines.map((line) => (
            <ReferenceDot
              key={line.storeId}
              x={chart.days[1]}
              y={line.label}
              r={0}
              ifOverflow="visible"
              label={{ value: line.name, position: "right", fill: "var(--ink)", fontSize: 14 }}
            />
          ))
        : null}
    </ComposedChart>
  );
}
