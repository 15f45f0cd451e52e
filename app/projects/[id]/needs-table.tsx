import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ProjectExposure } from "../../../lib/exposure/exposure-figures.ts";
import { totalsText } from "../../../lib/show/exposure-totals-text.ts";
import { moneyText } from "../../../lib/show/money-text.ts";
import { requirementRows } from "../../../lib/show/requirement-row.ts";
import type { StandInsOfNeed } from "../../../lib/show/stand-ins.ts";
import { Below } from "../../_ui/money-text.tsx";
import { Table } from "../../_ui/table.tsx";
import type { Names } from "../../_workspace/names-of.ts";
import { needCells } from "./need-cells.tsx";

export type NeedsTableProps = Readonly<{
  project: ProjectExposure;
  day: LocalDate;
  names: Names;
  /** What stands in for a need, by its id. */
  standIns: ReadonlyMap<string, StandInsOfNeed>;
  /** Requirements closed on or before the day. */
  closed: ReadonlySet<string>;
}>;

/** Each requirement against what is locked in, what finishing it costs at today's best offers, and the whole job below. */
export async function NeedsTable({ project, day, names, standIns, closed }: NeedsTableProps) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const totals = totalsText(project.totals, locale);
  const rows = await Promise.all(
    requirementRows(project.lines, day, locale).map(async (row) => ({
      key: row.requirementId,
      cells: await needCells(row, names, closed.has(row.requirementId), standIns.get(row.requirementId)),
      faint: closed.has(row.requirementId),
    })),
  );
  const charges = project.orderCharges.map((charge) => ({
    key: `${charge.storeId} ${charge.name}`,
    cells: [
      t("chargeLine", { name: charge.name, store: names.store(charge.storeId) }),
      "",
      "",
      "",
      "",
      "",
      moneyText(charge.amount, locale),
    ],
  }));
  return (
    <Table
      caption={t("needs")}
      captionHidden
      cards
      least="52rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "needed", label: t("needed"), figures: true },
        { key: "locked", label: t("lockedIn"), figures: true },
        { key: "open", label: t("open"), figures: true },
        { key: "paid", label: t("paidEach"), figures: true },
        { key: "now", label: t("nowEach"), figures: true },
        { key: "finish", label: t("toFinish", { currency: totals.currency }), figures: true },
      ]}
      rows={[...rows, ...charges]}
      foot={[
        t("whole"),
        "",
        "",
        "",
        <>
          {totals.lockedCost}
          <Below>{t("lockedIn")}</Below>
        </>,
        "",
        <>
          {totals.toFinishWithCharges}
          {totals.complete ? null : <Below>{t("atLeastBelow")}</Below>}
        </>,
      ]}
    />
  );
}
