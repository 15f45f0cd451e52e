import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { decimal } from "../../lib/decimal.ts";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import { money } from "../../lib/money/money.ts";
import { lotToBe } from "../../lib/stock/lot-to-be.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { demoEntries } from "../../prisma/demo/entries.ts";

const cad = (amount: Parameters<typeof money>[0] | null) => (amount === null ? null : money(amount, "CAD"));

/** The demo of a day as the core's facts, without a database: what each entry becomes once it is stored. */
export function demoFacts(today: LocalDate): ExposureFacts {
  const demo = demoEntries(today);
  const stores = demo.stores.map(({ id, entry }) => ({ ...entry, id, archivedOn: null }));
  const materials = demo.materials.map(({ id, entry }) => ({ ...entry, id, archivedOn: null }));
  return {
    valuation: {
      homeCurrency: "CAD",
      taxRegion: "CA-NS",
      regions: new Map([...CANADA, demo.region].map((region) => [region.code, region])),
      registrations: [],
      rates: { rates: demo.rates, chosen: {} },
      stores: new Map(stores.map((store) => [store.id, store])),
      recheckDays: 30,
      today,
    },
    materials: new Map(materials.map((material) => [material.id, material])),
    projects: demo.projects.map(({ id, entry: { status, statusFrom, budget, ...rest } }) => ({
      ...rest,
      id,
      statuses: [{ status, from: statusFrom ?? today }],
      budget: cad(budget),
    })),
    requirements: demo.requirements.map(({ id, projectId, entry }) => ({
      id,
      projectId,
      materialId: entry.materialId,
      revisions: [
        {
          ...entry,
          validFrom: entry.validFrom ?? today,
          budgetUnitPrice: cad(entry.budgetUnitPrice),
        },
      ],
      alternatives: entry.alternatives,
      closedOn: null,
    })),
    observations: demo.observations.map(({ id, entry }) => ({ ...entry, id })),
    lots: demo.lots.map(({ id, entry }) => {
      const { paid, paidHome } = entry;
      if (paid === null) throw new Error(`the demo's lot ${id} says nothing of what was paid`);
      return lotToBe(entry, { id, paid, paidHome: cad(paidHome) });
    }),
    events: demo.events.map(({ id, lotId, entry }, sequence) => ({ ...entry, id, lotId, sequence })),
    moneyRates: [{ percent: decimal(7), from: null }],
  };
}
