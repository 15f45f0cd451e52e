import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { addExchangeRates } from "../../lib/data/exchange-rates.ts";
import { addLot } from "../../lib/data/lots.ts";
import { addMaterial } from "../../lib/data/materials.ts";
import { addObservations } from "../../lib/data/observations.ts";
import { addProject } from "../../lib/data/projects.ts";
import { addRequirement } from "../../lib/data/requirements.ts";
import { addStockEvent } from "../../lib/data/stock-events.ts";
import { addStore } from "../../lib/data/stores.ts";
import { saveTaxRegion } from "../../lib/data/tax-regions.ts";
import {
  demoWorkspace,
  discardWorkspace,
  makeDemoWorkspace,
  updateWorkspace,
} from "../../lib/data/workspaces.ts";
import { demoEntries } from "./entries.ts";
import { DEMO_SETTINGS } from "./settings.ts";

/**
 * Loads the demo of a day into a workspace of its own, in place of an earlier demo. The same day gives the same demo.
 * Throws: Error naming the entry that was refused; then the half-made demo is thrown away.
 */
export async function loadDemo(today: LocalDate): Promise<{ workspaceId: string }> {
  const demo = demoEntries(today);
  const before = await demoWorkspace();
  if (before !== null) await discardWorkspace(before.id);
  const { id: workspaceId } = await makeDemoWorkspace();
  const scope = { workspaceId, actor: "demo" };
  try {
    await saved(saveTaxRegion(scope, demo.region));
    await saved(updateWorkspace(scope, DEMO_SETTINGS));
    await addExchangeRates(scope, demo.rates);
    for (const { id, entry } of demo.stores) await saved(addStore(scope, id, entry));
    for (const { id, entry } of demo.materials) await saved(addMaterial(scope, id, entry));
    const { rejected } = await addObservations(scope, demo.observations);
    if (rejected.length > 0)
      throw new Error(`the demo's prices were refused: ${JSON.stringify(rejected.slice(0, 3))}`);
    for (const { id, entry } of demo.projects) await saved(addProject(scope, id, entry));
    for (const { id, projectId, entry } of demo.requirements)
      await saved(addRequirement(scope, projectId, id, entry));
    for (const { id, entry } of demo.lots) await saved(addLot(scope, id, entry));
    for (const { id, lotId, entry } of demo.events) await saved(addStockEvent(scope, lotId, id, entry));
  } catch (error) {
    await discardWorkspace(workspaceId);
    throw error;
  }
  return { workspaceId };
}

async function saved(write: Promise<{ ok: boolean }>): Promise<void> {
  const answer = await write;
  if (!answer.ok) throw new Error(`the demo was refused: ${JSON.stringify(answer)}`);
}
