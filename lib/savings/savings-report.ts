import type { CurrencyCode } from "../money/currencies.ts";
import { savingTotals } from "./saving-totals.ts";
import { SAVING_KINDS, type SavingRow, type SavingsReport, type SavingTotals } from "./savings-figures.ts";

/**
 * Rows with their totals: realised, unrealised (what is held), and by kind. Units: home currency. Rounds: never.
 * Source: rules.md R10.
 */
export function savingsReport(rows: readonly SavingRow[], currency: CurrencyCode): SavingsReport {
  const totals = (which: (row: SavingRow) => boolean) => savingTotals(rows.filter(which), currency);
  const byKind: Partial<Record<SavingRow["kind"], SavingTotals>> = {};
  for (const kind of SAVING_KINDS) {
    if (rows.some((row) => row.kind === kind)) byKind[kind] = totals((row) => row.kind === kind);
  }
  return {
    rows,
    realised: totals(({ kind }) => kind !== "held"),
    unrealised: totals(({ kind }) => kind === "held"),
    byKind,
  };
}

/**
 * The part of a report that is one project's. A lot that served several projects leaves only the rows of this one; what
 * left a lot for no requirement is no project's. Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function savingsOfProject(report: SavingsReport, projectId: string): SavingsReport {
  const rows = report.rows.filter((row) => row.projectId === projectId);
  return savingsReport(rows, report.realised.saving.currency);
}
