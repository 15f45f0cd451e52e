import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { SavingsFacts } from "../savings/savings.ts";
import { inSnapshot, type Scope } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { LIVE_LOTS, lotsWithin } from "./lot-rows.ts";
import { materialsWithin } from "./material-rows.ts";
import { OBSERVATION_COLUMNS, type ObservationRow, observationOfRow } from "./observation-rows.ts";
import { projectsWithin } from "./project-rows.ts";
import { requirementsWithin } from "./requirement-rows.ts";
import { rows } from "./rows.ts";
import { eventsWithin } from "./stock-event-rows.ts";
import { valuedWithin } from "./valuation.ts";

/** First form: everything up to the day; narrowed by candidates next. */
export function exposureFacts(scope: Scope, day: LocalDate, _projectId?: string): Promise<ExposureFacts> {
  return inSnapshot(scope, async (tx) => {
    const materials = [...(await materialsWithin(tx, "live")), ...(await materialsWithin(tx, "archived"))];
    const observations = await rows<ObservationRow>(
      tx,
      Prisma.sql`SELECT ${OBSERVATION_COLUMNS} FROM observation o WHERE o.deleted_at IS NULL AND o.seen_on <= ${day}::date`,
    );
    return {
      ...(await valuedWithin(tx)),
      materials: new Map(materials.map((material) => [material.id, material])),
      projects: await projectsWithin(tx),
      requirements: await requirementsWithin(tx),
      observations: observations.map(observationOfRow),
      lots: await lotsWithin(tx, LIVE_LOTS),
      events: await eventsWithin(tx, Prisma.sql`e.undone_at IS NULL`),
    };
  });
}

/** All that savings up to a day are computed from. projectId: one project's lots only; null: all. */
export function savingsFacts(scope: Scope, projectId: string | null, day: LocalDate): Promise<SavingsFacts> {
  return exposureFacts(scope, day, projectId ?? undefined);
}
