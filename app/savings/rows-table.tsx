import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import { dayText } from "../../lib/show/day-text.ts";
import type { SavingRowText } from "../../lib/show/savings-rows.ts";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";
import { Gain } from "./gain.tsx";

type Words = Awaited<ReturnType<typeof getTranslations<"savings">>>;
type RowsTableProps = Readonly<{
  rows: readonly SavingRowText[];
  materials: ReadonlyMap<string, Material>;
  names: Names;
  /** The question these rows answer, as the end of an address. */
  query: string;
}>;

/** The amount, or in words that it is not known. */
function amount(text: string | null, t: Words) {
  return text ?? <NotKnown>{t("notKnown")}</NotKnown>;
}

/** What must be said about a saving: why it is not known, that a price was drawn, that carrying is not in it. */
function remarks(row: SavingRowText, t: Words) {
  return [
    row.missing === null ? null : t(`missing.${row.missing}`),
    row.interpolated ? t("interpolated") : null,
    row.beforeCarrying && row.saving ? t("beforeCarrying") : null,
  ].filter((remark) => remark !== null);
}

/** Every quantity that left a lot or is set aside, once: what was paid, what stores asked then and at use, and the difference in parts. */
export async function RowsTable({ rows, materials, names, query }: RowsTableProps) {
  const t = await getTranslations("savings");
  const locale = await getLocale();
  const units = await unitWords();
  const figures = ["paid", "goingThen", "goingNow", "discount", "timing", "carrying"] as const;
  return (
    <Table
      caption={t("rows")}
      captionHidden
      cards
      least="64rem"
      columns={[
        { key: "material", label: t("material") },
        ...figures.map((key) => ({ key, label: t(key), figures: true })),
        { key: "saving", label: t("saving"), figures: true },
        { key: "strict", label: t("strict"), figures: true },
      ]}
      rows={rows.map((row) => {
        const unit = materials.get(row.materialId)?.purchaseUnit;
        const left = row.kind !== "drawn" && row.kind !== "held";
        return {
          key: row.key,
          faint: row.state === "unrealised",
          cells: [
            <>
              <Link href={`/savings/${encodeURIComponent(row.key)}${query}`}>
                {names.material(row.materialId)}
              </Link>
              <Below>
                {row.quantity.text} {unit ? units.of(unit, row.quantity.exact) : ""}
                {", "}
                {row.missedAtCount ? t("missedAtCount") : t(`kinds.${row.kind}`)}
                {row.on === null ? "" : `, ${dayText(row.on, locale)}`}
              </Below>
              {row.projectId ? <Below>{names.project(row.projectId)}</Below> : null}
              <Below>
                {t("acquiredBy", {
                  source: t(`sources.${row.source}`),
                  day: dayText(row.acquiredOn, locale),
                })}
              </Below>
              {remarks(row, t).map((remark) => (
                <Below key={remark}>{remark}</Below>
              ))}
            </>,
            amount(row.paid, t),
            left ? "–" : amount(row.goingAtAcquisition, t),
            left ? (
              <>
                {row.received ?? "–"}
                {row.received ? <Below>{t("received")}</Below> : null}
              </>
            ) : (
              amount(row.goingAtDraw, t)
            ),
            left ? "–" : amount(row.discount, t),
            left ? "–" : amount(row.timing, t),
            row.carrying ?? <NotKnown>{t("notCounted")}</NotKnown>,
            <Gain key="saving" gain={row.saving} />,
            <Gain key="strict" gain={row.strict} />,
          ],
        };
      })}
    />
  );
}
