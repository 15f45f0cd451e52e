import { getLocale, getTranslations } from "next-intl/server";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { trendChart } from "../../../lib/show/trend-chart.ts";
import { trendLots } from "../../../lib/show/trend-lots.ts";
import { trendPoints, trendStart } from "../../../lib/show/trend-points.ts";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import style from "./trend.module.css";
import { TrendFigure } from "./trend-figure.client.tsx";
import { TrendKey } from "./trend-key.tsx";
import { trendSays } from "./trend-says.ts";
import { TrendStill } from "./trend-still.tsx";
import { TrendSwitches } from "./trend-switches.tsx";
import { TrendTable } from "./trend-table.tsx";
import type { View } from "./view.ts";

type TrendProps = Readonly<{ material: Material; facts: ExposureFacts; view: View }>;

/** The price of a material through time: one chart per currency looked at, and the figures behind it. */
export async function Trend({ material, facts, view }: TrendProps) {
  const t = await getTranslations("materials.page");
  const reasons = await getTranslations("materials.reasons");
  const locale = await getLocale();
  const units = await unitWords();
  const { asked } = view;
  const says = await trendSays(material.purchaseUnit);
  const { points, notDrawn } = trendPoints(facts, material, asked, locale);
  const lots = trendLots(facts, material, asked, locale);
  const codes = [...new Set([...points, ...lots].map(({ currency }) => currency))];
  const charts = codes.flatMap(
    (currency) =>
      trendChart(points, lots, {
        currency,
        from: trendStart(asked),
        day: asked.day,
        locale,
        sayPoint: says.point,
        sayLot: says.lot,
      }) ?? [],
  );
  const unit = units.one(asked.unit);
  const lotWords = new Map(lots.map((lot) => [lot.id, says.lotInKey(lot)]));
  return (
    <Part title={t("trend")} note={t("trendNote")} id="trend">
      <TrendSwitches view={view} />
      {charts.length === 0 ? <p>{t("nothingToDraw")}</p> : null}
      {charts.map((chart) => {
        const title = t("trendTitle", { name: material.name, unit, currency: chart.currency });
        return (
          <figure key={chart.currency} className={style.sheet}>
            <figcaption>{title}</figcaption>
            <TrendFigure chart={chart} label={title} still={<TrendStill chart={chart} label={title} />} />
            <TrendKey chart={chart} says={lotWords} />
            {chart.otherStores > 0 ? <p>{t("otherStores", { count: chart.otherStores })}</p> : null}
          </figure>
        );
      })}
      {notDrawn.map(({ reason, count }) => (
        <p key={reason}>{t("leftOutTrend", { count, reason: reasons(reason) })}</p>
      ))}
      {charts.length > 0 ? (
        <TrendTable
          points={points}
          lots={lots}
          unit={unit}
          currency={codes.length === 1 ? (codes[0] ?? null) : null}
          sayLot={says.lotInKey}
        />
      ) : null}
    </Part>
  );
}
