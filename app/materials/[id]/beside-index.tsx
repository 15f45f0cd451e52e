import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { MaterialIndex } from "../../../lib/data/reference-indices.ts";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { priceBesideIndex } from "../../../lib/show/price-beside-index.ts";
import { KeyFigures, Part } from "../../_ui/page-head.tsx";

type BesideIndexProps = Readonly<{
  named: MaterialIndex;
  day: LocalDate;
  material: Material;
  facts: ExposureFacts;
}>;

/** The going price of a year ago in the prices of the newest month of the material's index, and what it is now. */
export async function BesideIndex({ named: { index, values }, day, material, facts }: BesideIndexProps) {
  const t = await getTranslations("materials.index");
  const locale = await getLocale();
  const { observations, valuation } = facts;
  const beside = priceBesideIndex(values, day, { observations, material, valuation }, locale);
  return (
    <Part
      title={t("title")}
      note={
        <>
          <Link href={`/settings/indices/${index.id}`}>{index.name}</Link> ({index.publisher}, {index.series}
          ). {t("formula")}
        </>
      }
    >
      {beside === null ? (
        <p>{t("notKnown")}</p>
      ) : (
        <KeyFigures
          figures={[
            {
              key: "then",
              label: t("then", { day: dayText(beside.thenOn, locale) }),
              value: `${beside.currency} ${beside.before}`,
            },
            {
              key: "real",
              label: t("real", { month: beside.nowMonth }),
              value: `${beside.currency} ${beside.real}`,
              note: t("realNote", { before: beside.before, now: beside.nowLevel, own: beside.thenLevel }),
            },
            {
              key: "now",
              label: t("now", { day: dayText(day, locale) }),
              value: `${beside.currency} ${beside.now}`,
              note: t("nowNote", { change: beside.change, real: beside.changeReal }),
            },
            {
              key: "index",
              label: t("moved", { from: beside.thenMonth, to: beside.nowMonth }),
              value: beside.indexChange,
              note: t("movedNote", { points: beside.indexPoints }),
            },
          ]}
        />
      )}
    </Part>
  );
}
