import { getLocale, getTranslations } from "next-intl/server";
import type { RequirementRevision } from "../../../../../lib/projects/project.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import { quantityText, unitPriceText } from "../../../../../lib/show/money-text.ts";
import { percentText } from "../../../../../lib/show/percent-text.ts";
import { NotKnown } from "../../../../_ui/money-text.tsx";
import { Table } from "../../../../_ui/table.tsx";
import { unitWords } from "../../../../_words/unit-words.ts";

/** The dated revisions of a need, the newest first. */
export async function NeedHistory({ revisions }: Readonly<{ revisions: readonly RequirementRevision[] }>) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const units = await unitWords();
  return (
    <Table
      caption={t("history")}
      captionHidden
      cards
      least="34rem"
      columns={[
        { key: "from", label: t("from") },
        { key: "quantity", label: t("quantity"), figures: true },
        { key: "waste", label: t("waste"), figures: true },
        { key: "by", label: t("neededBy"), figures: true },
        { key: "budget", label: t("budgetUnitPrice"), figures: true },
      ]}
      rows={[...revisions].reverse().map((revision) => ({
        key: revision.validFrom,
        cells: [
          dayText(revision.validFrom, locale),
          `${quantityText(revision.quantity, locale)} ${units.of(revision.unit, revision.quantity.toFixed())}`,
          percentText(revision.wastePercent, locale),
          dayText(revision.neededBy, locale),
          revision.budgetUnitPrice === null ? (
            <NotKnown key="b">{t("noBudget")}</NotKnown>
          ) : (
            unitPriceText(revision.budgetUnitPrice, locale)
          ),
        ],
      }))}
    />
  );
}
