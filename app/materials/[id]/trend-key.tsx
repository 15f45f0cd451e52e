import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { TrendChart } from "../../../lib/show/trend-chart.ts";
import style from "./trend.module.css";
import { lookOf } from "./trend-look.ts";
import { LotMark, PaidMark, ShelfMark, SpecialMark } from "./trend-marks.tsx";

/** What the lines and marks mean, and each own lot by its letter. says: a lot in words. */
export async function TrendKey({
  chart,
  says,
}: Readonly<{ chart: TrendChart; says: ReadonlyMap<string, string> }>) {
  const t = await getTranslations("materials.page");
  const drawn = (kind: string) =>
    chart.rows.some(({ values }) => Object.keys(values).some((key) => key.startsWith(kind)));
  const ink = "var(--ink)";
  return (
    <>
      <ul className={style.key}>
        {chart.lines.map((line, index) => (
          <li key={line.storeId}>
            <svg width="40" height="12" aria-hidden="true">
              <path
                d="M0 6h40"
                stroke={lookOf(index).colour}
                strokeWidth="2"
                strokeDasharray={lookOf(index).dash}
              />
              <ShelfMark x={20} y={6} colour={lookOf(index).colour} />
            </svg>
            {line.name}
            {line.beforeImportCharges ? `, ${t("beforeImport")}` : ""}
          </li>
        ))}
        {drawn("special") ? (
          <li>
            <svg width="12" height="12" aria-hidden="true">
              <SpecialMark x={6} y={6} colour={ink} />
            </svg>
            {t("special")}
          </li>
        ) : null}
        {drawn("paid") ? (
          <li>
            <svg width="12" height="12" aria-hidden="true">
              <PaidMark x={6} y={6} colour={ink} />
            </svg>
            {t("paid")}
          </li>
        ) : null}
      </ul>
      {chart.lots.length > 0 ? (
        <ul className={style.lots} aria-label={t("lot")}>
          {chart.lots.map(({ id, letter }) => (
            <li key={id}>
              <svg width="22" height="26" viewBox="-11 -20 22 26" aria-hidden="true">
                <LotMark x={0} y={0} letters={letter} />
              </svg>
              <span>
                <span className={style.letter}>{letter}</span>{" "}
                <Link href={`/stock/${id}`}>{says.get(id)}</Link>
              </span>
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}
