import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { SavingsFacts } from "../savings/savings.ts";
import { candidatesWithin } from "./candidates.ts";
import { inSnapshot, type Scope, type Tx } from "./client.ts";
import { byId, firstDayOf, stockWithin } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { materialFactsWithin } from "./material-facts.ts";
import { materialsWithin } from "./material-rows.ts";
import { projectFactsWithin } from "./project-facts.ts";
import { projectsWithin } from "./project-rows.ts";
import { requirementsWithin } from "./requirement-rows.ts";
import { savingsFactsWithin } from "./savings-facts.ts";
import { valuedWithin } from "./valuation.ts";

async function allFactsWithin(tx: Tx, day: LocalDate, every: boolean): Promise<ExposureFacts> {
  const materials = await materialsWithin(tx, "all");
  const stock = await stockWithin(tx, Prisma.sql`true`);
  const valued = await valuedWithin(tx, firstDayOf(stock, day));
  const asks = materials.map(({ id }) => ({ materialId: id, day }));
  return {
    ...valued,
    ...stock,
    materials: byId(materials),
    projects: await projectsWithin(tx),
    requirements: await requirementsWithin(tx),
    observations: await candidatesWithin(tx, asks, { valuation: valued.valuation, knownOn: day, every }),
  };
}

/**
 * What exposure on a day is computed from, of all projects or of one. observations: the few that decide it; where a fresh
 * price at home covers any quantity, stale ones stay behind (`offerFacts` has them too). For one project, others come along
 * only as far as they share limited offers with it, so only that project's own figures are whole.
 */
export function exposureFacts(scope: Scope, day: LocalDate, projectId?: string): Promise<ExposureFacts> {
  return inSnapshot(scope, (tx) =>
    projectId === undefined ? allFactsWithin(tx, day, false) : projectFactsWithin(tx, projectId, day),
  );
}

/** The same for all projects with every offer in force on the day, stale ones too: for lists and for the aisle. */
export function offerFacts(scope: Scope, day: LocalDate): Promise<ExposureFacts> {
  return inSnapshot(scope, (tx) => allFactsWithin(tx, day, true));
}

/** What savings up to a day are computed from: of every lot, or of those that served one project. See `savingsFactsWithin`. */
export function savingsFacts(scope: Scope, projectId: string | null, day: LocalDate): Promise<SavingsFacts> {
  return inSnapshot(scope, (tx) => savingsFactsWithin(tx, projectId, day));
}

/** Everything about one material up to a day, its whole history too; null: not there. See `materialFactsWithin`. */
export function materialFacts(
  scope: Scope,
  materialId: string,
  day: LocalDate,
): Promise<ExposureFacts | null> {
  return inSnapshot(scope, (tx) => materialFactsWithin(tx, materialId, day));
}

/** The workspace's currency, taxes, stores (archived ones too) and every exchange rate: what any price of any day is valued with. */
export function valuationOf(scope: Scope): Promise<Valuation> {
  return inSnapshot(scope, async (tx) => (await valuedWithin(tx)).valuation);
}
