import { isLocalDate, type LocalDate } from "../calendar/local-date.ts";
import type { SavingsReport } from "../savings/savings-figures.ts";
import { savingsReport } from "../savings/savings-report.ts";

/** Which savings are asked for; null: all. Days are those of leaving the lot, both counted. */
export type SavingsAsked = Readonly<{
  from: LocalDate | null;
  until: LocalDate | null;
  projectId: string | null;
  materialId: string | null;
}>;

/** Which savings an address asks for; what is no day, and what is empty, narrows nothing. */
export function savingsAsked(query: Readonly<Record<string, string | undefined>>): SavingsAsked {
  const day = (text: string | undefined) => (isLocalDate(text) ? text : null);
  return {
    from: day(query.from),
    until: day(query.until),
    projectId: query.project ?? null,
    materialId: query.material ?? null,
  };
}

/** A report narrowed to one project, one material, or both; its totals are those of the rows left. Rounds: never. */
export function narrowedSavings(
  report: SavingsReport,
  { projectId, materialId }: Pick<SavingsAsked, "projectId" | "materialId">,
): SavingsReport {
  if (projectId === null && materialId === null) return report;
  const rows = report.rows.filter(
    (row) =>
      (projectId === null || row.projectId === projectId) &&
      (materialId === null || row.materialId === materialId),
  );
  return savingsReport(rows, report.realised.saving.currency);
}
