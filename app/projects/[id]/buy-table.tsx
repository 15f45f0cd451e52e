import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ProjectExposure } from "../../../lib/exposure/exposure-figures.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import type { Requirement } from "../../../lib/projects/project.ts";
import { comparisonBasis } from "../../../lib/show/comparison-basis.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { toBuy } from "../../../lib/show/to-buy.ts";
import { Age } from "../../_ui/age.tsx";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { basisWords } from "../../_words/basis-words.ts";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";
import { StandsInFor } from "./stands-in.tsx";

type BuyTableProps = Readonly<{
  project: ProjectExposure;
  requirements: readonly Requirement[];
  day: LocalDate;
  names: Names;
  valuation: Valuation;
}>;

/** The best offers in force, combined: what would be bought where today. Nothing when nothing is open. */
export async function BuyTable({ project, requirements, day, names, valuation }: BuyTableProps) {
  const t = await getTranslations("projects");
  const terms = await getTranslations("terms");
  const locale = await getLocale();
  const units = await unitWords();
  const basis = (await basisWords())(comparisonBasis("open", valuation, day, locale));
  const rows = toBuy(project, requirements, day, locale);
  if (rows.length === 0) return null;
  return (
    <Part title={t("buyTitle")} note={`${t("buyNote")} ${basis}`}>
      <Table
        caption={t("buyTitle")}
        captionHidden
        cards
        least="44rem"
        columns={[
          { key: "material", label: t("material") },
          { key: "store", label: t("store") },
          { key: "quantity", label: t("quantity"), figures: true },
          { key: "each", label: t("nowEach"), figures: true },
          { key: "cost", label: t("cost", { currency: valuation.homeCurrency }), figures: true },
          { key: "holds", label: t("holds"), figures: true },
        ]}
        rows={rows.map((row) => ({
          key: row.key,
          cells: [
            <>
              <Link href={`/materials/${row.materialId}`}>{names.material(row.materialId)}</Link>
              <StandsInFor standIns={row.standIns} names={names} />
            </>,
            <>
              {names.store(row.storeId)}
              <Below>{terms(row.terms)}</Below>
            </>,
            <>
              {row.quantity} {units.of(row.unit, row.quantityExact)}
              {row.over ? <Below>{t("over", { quantity: row.over })}</Below> : null}
              <Below>
                <Link href={`/stock/new?observation=${row.observationId}&need=${row.requirementId}`}>
                  {t("boughtIt")}
                </Link>
              </Below>
            </>,
            <>
              {row.each}
              <Below>
                <Age days={row.ageDays} stale={row.stale} />
              </Below>
            </>,
            row.cost,
            row.lapsesOn === null ? (
              <Below key="h">{t("holdsOpen")}</Below>
            ) : (
              <>
                {dayText(row.lapsesOn, locale)}
                <Below>{t("daysLeft", { days: row.daysLeft ?? 0 })}</Below>
              </>
            ),
          ],
        }))}
      />
    </Part>
  );
}
