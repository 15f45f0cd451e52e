import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { savingsReportFacts } from "../../../lib/data/savings-facts.ts";
import { type ReportContent, reportContent } from "../../../lib/savings/report-content.ts";
import type { SavingsFacts } from "../../../lib/savings/savings.ts";
import { type SavingsAsked, savingsAsked } from "../../../lib/show/savings-asked.ts";
import { dayAsked, type Query } from "../../_workspace/day-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** The query of an address, one value each; what is empty is not there. */
export async function valuesOf(query: Query): Promise<Readonly<Record<string, string | undefined>>> {
  return Object.fromEntries(
    Object.entries(await query).map(([name, value]) => [
      name,
      (Array.isArray(value) ? value[0] : value) || undefined,
    ]),
  );
}

export type ContentAsked = Readonly<{
  content: ReportContent;
  asked: SavingsAsked;
  facts: SavingsFacts;
  day: LocalDate;
  today: LocalDate;
}>;

/** The report an address asks for: one load, one reckoning. */
export async function contentAsked(query: Query): Promise<ContentAsked> {
  const { day, today } = await dayAsked(query);
  const asked = savingsAsked(await valuesOf(query));
  const facts = await savingsReportFacts(await scopeSeen(), null, { from: asked.from, day });
  return { content: reportContent({ ...asked, day }, facts), asked, facts, day, today };
}
