import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { SavingsFacts } from "../savings/savings.ts";
import { marksOfLots } from "../savings/unrealised-through-time.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { type Ask, candidatesWithin } from "./candidates.ts";
import { inSnapshot, type Scope, type Tx } from "./client.ts";
import { byId, firstDayOf, lotsFor, stockWithin } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { materialIdsOf } from "./project-facts.ts";
import { projectsOfIds } from "./project-rows.ts";
import { requirementsWhere, requirementsWithin } from "./requirement-rows.ts";
import { valuedWithin } from "./valuation.ts";

/** The days a lot is held against the market: when it was laid in, when some of it was drawn, and the day asked for. */
function asksOf(
  { lots, events }: Readonly<{ lots: readonly Lot[]; events: readonly StockEvent[] }>,
  day: LocalDate,
  marks: readonly LocalDate[],
): Ask[] {
  const materialOf = new Map(lots.map((lot) => [lot.id, lot.materialId]));
  const drawn = events.filter(({ kind, requirementId }) => kind === "drawn" && requirementId !== null);
  return [
    ...lots.flatMap(({ materialId, orderedOn }) => [
      { materialId, day: orderedOn },
      { materialId, day },
    ]),
    ...drawn.map(({ lotId, on }) => ({ materialId: materialOf.get(lotId) ?? "", day: on })),
    ...lots.flatMap(({ materialId, orderedOn }) =>
      marks.filter((mark) => mark >= orderedOn).map((mark) => ({ materialId, day: mark })),
    ),
  ].filter((ask) => ask.day <= day);
}

/**
 * All that savings up to a day are computed from: of every lot, or of those that served one project (a row of such a lot
 * may still be another project's). observations: the few that say what the market was on the days that matter.
 */
export async function savingsFactsWithin(
  tx: Tx,
  projectId: string | null,
  day: LocalDate,
  marks: MarksOf = () => [],
): Promise<SavingsFacts> {
  const own = projectId === null ? [] : await requirementsWithin(tx, projectId);
  const which = projectId === null ? Prisma.sql`true` : lotsFor(own.map(({ id }) => id));
  return factsOfLots(tx, which, day, marks);
}

/** Further days on which what is held is held against the market, from the lots that are looked at. */
type MarksOf = (lots: readonly Lot[]) => readonly LocalDate[];

async function factsOfLots(tx: Tx, which: Prisma.Sql, day: LocalDate, marks: MarksOf): Promise<SavingsFacts> {
  const stock = await stockWithin(tx, which);
  const served = [...new Set(stock.events.flatMap(({ requirementId }) => requirementId ?? []))];
  const requirements = await requirementsWhere(tx, Prisma.sql`q.id = ANY(${served}::text[]::uuid[])`);
  const valued = await valuedWithin(tx, firstDayOf(stock, day));
  const needed = [...materialIdsOf(requirements), ...stock.lots.map(({ materialId }) => materialId)];
  const projectIds = requirements.map((requirement) => requirement.projectId);
  const asked = { valuation: valued.valuation, knownOn: day, every: false };
  return {
    ...valued,
    ...stock,
    requirements,
    materials: byId(await materialsWithin(tx, needed)),
    projects: await projectsOfIds(tx, projectIds),
    observations: await candidatesWithin(tx, asksOf(stock, day, marks(stock.lots)), asked),
  };
}

/** What a report up to a day is reckoned from: the same, and the market on the days its picture marks. */
export function savingsReportFacts(
  scope: Scope,
  projectId: string | null,
  { from, day }: Readonly<{ from: LocalDate | null; day: LocalDate }>,
): Promise<SavingsFacts> {
  return inSnapshot(scope, (tx) =>
    savingsFactsWithin(tx, projectId, day, (lots) => marksOfLots(lots, from, day)),
  );
}

/** What the savings of one lot up to a day are reckoned from; without lots when it is not there. */
export function savingsFactsOfLot(scope: Scope, lotId: string, day: LocalDate): Promise<SavingsFacts> {
  return inSnapshot(scope, (tx) => factsOfLots(tx, Prisma.sql`l.id = ${lotId}::uuid`, day, () => []));
}
