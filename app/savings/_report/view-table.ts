import { localDate } from "../../../lib/calendar/local-date.ts";
import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { savingTotals } from "../../../lib/savings/saving-totals.ts";
import { keyOfRow, type SavingView, savingsBy } from "../../../lib/savings/savings-by.ts";
import type { SavingRow, SavingTotals } from "../../../lib/savings/savings-figures.ts";
import { monthOfYearText } from "../../../lib/show/month-of-year-text.ts";
import { LOT_ORIGINS } from "../../../lib/stock/lot.ts";
import { numberCell, totalCell } from "./cells.ts";
import type { ReportWords, WordedCell, WordedTable } from "./worded.ts";

/** What a group is called. */
function groupName(
  view: SavingView,
  key: string | null,
  content: ReportContent,
  { t, locale }: ReportWords,
): string {
  if (key === null) return t(`noKey.${view}`);
  if (view === "month") return monthOfYearText(localDate(`${key}-01`), locale);
  const origin = LOT_ORIGINS.find((one) => one === key);
  return view === "origin" && origin ? t(`origins.${origin}`) : (content.names[key] ?? "–");
}

/** The rows of a report grouped by project, material, month or origin; the groups add up to the total below them. */
export function viewTable(view: SavingView, content: ReportContent, words: ReportWords): WordedTable {
  const { t } = words;
  const { rows, currency, lots } = content;
  const origins = new Map(lots.map(({ id, origin }) => [id, origin]));
  const keyOf = (row: SavingRow) => keyOfRow(view, row, (lotId) => origins.get(lotId) ?? null);
  const cells = (realised: SavingTotals, unrealised: SavingTotals, count: number): WordedCell[] => [
    totalCell(realised, "saving", words),
    totalCell(realised, "strictSaving", words),
    totalCell(unrealised, "saving", words),
    totalCell(unrealised, "strictSaving", words),
    numberCell(realised.notKnown + unrealised.notKnown),
    numberCell(count),
  ];
  const named = savingsBy(rows, keyOf, currency).map((group) => ({
    ...group,
    name: groupName(view, group.key, content, words),
  }));
  if (view === "project" || view === "material")
    named.sort((a, b) => Number(a.key === null) - Number(b.key === null) || a.name.localeCompare(b.name));
  const of = (isHeld: boolean) =>
    savingTotals(
      rows.filter(({ kind }) => (kind === "held") === isHeld),
      currency,
    );
  return {
    key: view,
    title: t(`views.${view}`),
    note: null,
    columns: [
      { key: "name", label: t(`views.${view}`), figures: false },
      { key: "realised", label: t("realised"), figures: true },
      { key: "strict", label: t("strict"), figures: true },
      { key: "unrealised", label: t("unrealised"), figures: true },
      { key: "unrealised-strict", label: t("strict"), figures: true },
      { key: "not-known", label: t("notKnown"), figures: true },
      { key: "rows", label: t("rows"), figures: true },
    ],
    rows: named.map(({ key, name, realised, unrealised, rows: own }) => ({
      key: key ?? "none",
      cells: [{ text: name }, ...cells(realised, unrealised, own.length)],
    })),
    foot: [{ text: t("total") }, ...cells(of(false), of(true), rows.length)],
  };
}
