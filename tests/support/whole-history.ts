import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { Scope } from "../../lib/data/client.ts";
import { Decimal } from "../../lib/decimal.ts";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import type { Observation } from "../../lib/prices/observation.ts";

/** Figures as text: what is compared is every digit. */
export function plain(figures: unknown): unknown {
  return JSON.parse(
    JSON.stringify(figures, (_, value: unknown) => (value instanceof Decimal ? value.toFixed() : value)),
  );
}

/** Every live sighting of a workspace. The database of the test is set before this is called. */
export async function wholeHistory(scope: Scope, until: LocalDate): Promise<Observation[]> {
  const { materialsOf } = await import("../../lib/data/materials.ts");
  const { historyOf } = await import("../../lib/data/observations.ts");
  const found: Observation[] = [];
  for (const { id } of await materialsOf(scope)) found.push(...(await historyOf(scope, id, until)));
  return found;
}

/** The same facts with all of a history in the place of what was picked from it. */
export function withHistory(facts: ExposureFacts, history: readonly Observation[], day: LocalDate) {
  return { ...facts, observations: history.filter(({ seenOn }) => seenOn <= day) };
}
