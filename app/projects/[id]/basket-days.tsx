import { getTranslations } from "next-intl/server";
import type { BasketDayRow } from "../../../lib/show/basket-text.ts";
import { NotKnown } from "../../_ui/money-text.tsx";
import { More } from "../../_ui/more.tsx";
import { Table } from "../../_ui/table.tsx";

/** The index day by day, the newest first: its level, and against the row below it points and percent in columns of their own. */
export async function BasketDays({ days }: Readonly<{ days: readonly BasketDayRow[] }>) {
  const t = await getTranslations("basket");
  const step = (text: string | null, index: number) =>
    text ?? (index === days.length - 1 ? "" : <NotKnown>{t("otherMaterials")}</NotKnown>);
  return (
    <More title={t("days", { count: days.length })}>
      <Table
        caption={t("daysCaption")}
        least="34rem"
        columns={[
          { key: "day", label: t("day") },
          { key: "level", label: t("level"), figures: true },
          { key: "points", label: t("stepPoints"), figures: true },
          { key: "percent", label: t("stepPercent"), figures: true },
          { key: "covers", label: t("covers"), figures: true },
        ]}
        rows={days.map((row, index) => ({
          key: row.day,
          cells: [
            row.day,
            row.level ?? <NotKnown key="l">{t("levelNotKnown")}</NotKnown>,
            step(row.points, index),
            step(row.percent, index),
            t("coversText", { known: row.known, of: row.of }),
          ],
        }))}
      />
    </More>
  );
}
