import type * as z from "zod";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { faultsOf } from "../../lib/fault.ts";
import { materialEntry } from "../../lib/materials/material-entry.ts";
import { observationEntry } from "../../lib/prices/observation-entry.ts";
import { storeEntry } from "../../lib/prices/store-entry.ts";
import { projectEntry } from "../../lib/projects/project-entry.ts";
import { requirementEntry } from "../../lib/projects/requirement-entry.ts";
import { exchangeRateEntry } from "../../lib/rates/exchange-rate-entry.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";
import { taxRegionEntry } from "../../lib/tax/tax-region-entry.ts";
import { DEMO_MATERIALS, materialId } from "./materials.ts";
import { demoOffersNow, demoPrices } from "./prices.ts";
import { demoProjects, demoRequirements } from "./projects.ts";
import { demoRates } from "./rates.ts";
import { demoEvents, demoLots } from "./stock.ts";
import { DEMO_REGION, DEMO_STORES } from "./stores.ts";

/** The demo of a day, read by the same schemas as anything a person enters. Throws: Error naming the demo entry at fault. */
export function demoEntries(today: LocalDate) {
  return {
    region: read(taxRegionEntry, DEMO_REGION),
    rates: demoRates(today).map((rate) => read(exchangeRateEntry, rate)),
    stores: DEMO_STORES.map(({ id, ...store }) => ({ id, entry: read(storeEntry, store) })),
    materials: DEMO_MATERIALS.map(({ key, carried: _, ...material }) => ({
      id: materialId(key),
      entry: read(materialEntry, material),
    })),
    observations: [...demoPrices(today), ...demoOffersNow(today)].map(({ id, ...price }) => ({
      id,
      entry: read(observationEntry, price),
    })),
    projects: demoProjects(today).map(({ id, ...project }) => ({ id, entry: read(projectEntry, project) })),
    requirements: demoRequirements(today).map(({ id, projectId, ...line }) => ({
      id,
      projectId,
      entry: read(requirementEntry, line),
    })),
    lots: demoLots(today).map(({ id, ...lot }) => ({ id, entry: read(lotEntry, lot) })),
    events: demoEvents(today).map(({ id, lotId, ...event }) => ({
      id,
      lotId,
      entry: read(stockEventEntry, event),
    })),
  };
}

function read<S extends z.ZodType>(schema: S, given: unknown): z.output<S> {
  const parsed = schema.safeParse(given);
  if (parsed.success) return parsed.data;
  throw new Error(
    `the demo is at fault: ${JSON.stringify(faultsOf(parsed.error))} in ${JSON.stringify(given)}`,
  );
}
