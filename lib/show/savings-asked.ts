import { isLocalDate, type LocalDate } from "../calendar/local-date.ts";
import { type CurrencyCode, isCurrencyCode } from "../money/currencies.ts";
import { SAVING_VIEWS, type SavingView } from "../savings/savings-by.ts";

/** Which savings are asked for; null: all. Days are those of leaving the lot, both counted. */
export type SavingsAsked = Readonly<{
  from: LocalDate | null;
  until: LocalDate | null;
  projectId: string | null;
  materialId: string | null;
  /** null: the home currency. */
  currency: CurrencyCode | null;
  /** Grouped by. */
  view: SavingView;
}>;

/** Which savings an address asks for; what is no day, and what is empty, narrows nothing. */
export function savingsAsked(query: Readonly<Record<string, string | undefined>>): SavingsAsked {
  const day = (text: string | undefined) => (isLocalDate(text) ? text : null);
  const code = query.currency?.toUpperCase();
  return {
    from: day(query.from),
    until: day(query.until),
    projectId: query.project ?? null,
    materialId: query.material ?? null,
    currency: isCurrencyCode(code) ? code : null,
    view: SAVING_VIEWS.find((view) => view === query.by) ?? "project",
  };
}

/** The address of the same question elsewhere: only what is asked stands in it. given: what changes; undefined takes it away. */
export function savingsQuery(
  asked: SavingsAsked,
  asOf: LocalDate | null,
  given: Readonly<Record<string, string | undefined>> = {},
): string {
  const { from, until, projectId: project, materialId: material, currency, view } = asked;
  const all = {
    from,
    until,
    project,
    material,
    currency,
    by: view === "project" ? null : view,
    asOf,
    ...given,
  };
  const said = Object.entries(all).flatMap(([name, value]) => (value ? [[name, value]] : []));
  return said.length === 0 ? "" : `?${new URLSearchParams(said)}`;
}
