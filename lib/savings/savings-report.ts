import type { CurrencyCode } from "../money/currencies.ts";
import { savingTotals, totalsTogether } from "./saving-totals.ts";
import {
  SAVING_KINDS,
  type SavingKind,
  type SavingRow,
  type SavingsReport,
  type SavingTotals,
} from "./savings-figures.ts";

/**
 * Rows with their totals: realised, unrealised (what is held), and by kind. Units: home currency. Rounds: never.
 * Source: rules.md R10.
 */
export function savingsReport(rows: readonly SavingRow[], currency: CurrencyCode): SavingsReport {
  const kinds = new Map<SavingKind, SavingRow[]>(SAVING_KINDS.map((kind) => [kind, []]));
  for (const row of rows) kinds.get(row.kind)?.push(row);
  const totals = [...kinds].map(([kind, own]) => ({ kind, totals: savingTotals(own, currency) }));
  const of = (isHeld: boolean) =>
    totalsTogether(
      totals.filter(({ kind }) => (kind === "held") === isHeld).map((one) => one.totals),
      currency,
    );
  const byKind: Partial<Record<SavingKind, SavingTotals>> = {};
  for (const one of totals) if (one.totals.rows > 0) byKind[one.kind] = one.totals;
  return { rows, realised: of(false), unrealised: of(true), byKind };
}

/**
 * The part of a report that is one project's. A lot that served several projects leaves only the rows of this one; what
 * left a lot for no requirement is no project's. Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function savingsOfProject(report: SavingsReport, projectId: string): SavingsReport {
  const rows = report.rows.filter((row) => row.projectId === projectId);
  return savingsReport(rows, report.realised.saving.currency);
}
