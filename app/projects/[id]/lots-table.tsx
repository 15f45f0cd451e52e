import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { lockedLots } from "../../../lib/show/locked-lots.ts";
import { eachOnce, standInTexts } from "../../../lib/show/stand-ins.ts";
import { Below, NotKnown } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";
import { StandsInFor } from "./stands-in.tsx";

type LotsTableProps = Readonly<{
  facts: ExposureFacts;
  day: LocalDate;
  requirementIds: ReadonlySet<string>;
  names: Names;
}>;

/** What is locked in, lot by lot: set aside, used, at which cost. Nothing when nothing is. */
export async function LotsTable({ facts, day, requirementIds, names }: LotsTableProps) {
  const t = await getTranslations("projects");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  const rows = lockedLots(day, facts, requirementIds, locale);
  if (rows.length === 0) return null;
  const served = (ids: readonly string[]) => facts.requirements.filter(({ id }) => ids.includes(id));
  return (
    <Part title={t("lots")}>
      <Table
        caption={t("lots")}
        captionHidden
        cards
        least="40rem"
        columns={[
          { key: "lot", label: t("lot") },
          { key: "bought", label: stock("acquired"), figures: true },
          { key: "aside", label: t("allocated"), figures: true },
          { key: "used", label: t("drawn"), figures: true },
          { key: "cost", label: t("cost", { currency: facts.valuation.homeCurrency }), figures: true },
        ]}
        rows={rows.map((row) => ({
          key: row.lotId,
          cells: [
            <>
              <Link href={`/stock/${row.lotId}`}>{names.material(row.materialId)}</Link>
              <StandsInFor
                standIns={eachOnce(standInTexts(served(row.requirementIds), [row.materialId], locale))}
                names={names}
              />
              {row.storedAt ? <Below>{row.storedAt}</Below> : null}
            </>,
            <>
              {dayText(row.orderedOn, locale)}
              <Below>{stock(`origins.${row.origin}`)}</Below>
            </>,
            row.setAside === null ? (
              "–"
            ) : (
              <>
                {row.setAside.text} {units.of(row.unit, row.setAside.exact)}
                {row.onOrder ? <Below>{t("onOrder", { quantity: row.onOrder })}</Below> : null}
              </>
            ),
            row.used === null ? "–" : `${row.used.text} ${units.of(row.unit, row.used.exact)}`,
            row.cost ?? <NotKnown>{stock("unknownCost.other")}</NotKnown>,
          ],
        }))}
      />
    </Part>
  );
}
