import { plusDays } from "../calendar/local-date.ts";
import { type ExposureFacts, groupedBy } from "../exposure/exposure-facts.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { Material } from "../materials/material.ts";
import type { Observation } from "../prices/observation.ts";
import { aisleRegions, aisleStore } from "./aisle-facts-of.ts";
import { plainLows } from "./aisle-lows.ts";
import { plainSeen } from "./aisle-seen.ts";
import {
  type AisleSnapshot,
  type PlainNeed,
  type PlainPaid,
  SNAPSHOT_VERSION,
  type SnapshotMaterial,
} from "./aisle-snapshot.ts";
import { lastPaid } from "./last-paid.ts";
import { type OpenNeed, openNeedOf } from "./logged-price.ts";

/** Exchange rates of so many days come along: those of today may be 45 days old, and the phone may be away for a while. */
const DAYS_OF_RATES = 60;

type Taken = Pick<AisleSnapshot, "takenAt" | "workspace">;

function plainNeed({ open, ...need }: OpenNeed): PlainNeed {
  return { ...need, open: open.toFixed() };
}

/** Everything of each material by its id, gathered once: two thousand materials are looked through for each otherwise. */
function gathered(facts: ExposureFacts, exposure: WorkspaceExposure) {
  const requirements = new Map(facts.requirements.map((requirement) => [requirement.id, requirement]));
  const needs = new Map<string, PlainNeed[]>();
  for (const line of exposure.projects.flatMap((project) => project.lines)) {
    const need = openNeedOf(line, requirements.get(line.requirementId), exposure.day);
    if (need !== null) needs.set(line.materialId, [...(needs.get(line.materialId) ?? []), plainNeed(need)]);
  }
  const lots = groupedBy(facts.lots, (lot) => lot.materialId);
  const events = groupedBy(facts.events, (event) => event.lotId);
  const paid = (material: Material): PlainPaid | null => {
    const own = lots.get(material.id) ?? [];
    const theirs = own.flatMap((lot) => events.get(lot.id) ?? []);
    const last = lastPaid({ ...facts, lots: own, events: theirs }, material, exposure.day);
    return last === null ? null : { ...last, each: last.each.amount.toFixed() };
  };
  return { needs, paid };
}

function plainDimensions(material: Material): SnapshotMaterial["dimensions"] {
  const sizes = Object.entries(material.dimensions);
  return Object.fromEntries(sizes.map(([name, { value, unit }]) => [name, { value: value.toFixed(), unit }]));
}

/**
 * What the phone takes along. facts, exposure: of today, with every offer in force. history: what was seen of the materials
 * earlier, as far as it is to be told since when nothing was as low. Rounds: never, but lows to 20 places.
 */
export function aisleSnapshot(
  facts: ExposureFacts,
  exposure: WorkspaceExposure,
  history: readonly Observation[],
  taken: Taken,
): AisleSnapshot {
  const { valuation } = facts;
  const stores = [...valuation.stores.values()];
  const seen = groupedBy(facts.observations, (observation) => observation.materialId);
  const earlier = groupedBy(history, (observation) => observation.materialId);
  const { needs, paid } = gathered(facts, exposure);
  const plain = (material: Material): SnapshotMaterial => {
    const { id, name, category, purchaseUnit: unit, exemptFrom, recheckDays } = material;
    const known = seen.get(id) ?? [];
    const days = [...known, ...(earlier.get(id) ?? [])].map(({ seenOn }) => seenOn);
    return {
      ...{ id, name, category, unit, exemptFrom, recheckDays, dimensions: plainDimensions(material) },
      lastSeen: days.reduce<(typeof days)[number] | null>((a, b) => (a === null || b > a ? b : a), null),
      seen: known.map(plainSeen),
      needs: (needs.get(id) ?? []).sort((a, b) => a.neededBy.localeCompare(b.neededBy)),
      paid: paid(material),
      lows: plainLows(earlier.get(id) ?? [], valuation.today, material, valuation),
    };
  };
  return {
    version: SNAPSHOT_VERSION,
    ...taken,
    today: valuation.today,
    homeCurrency: valuation.homeCurrency,
    taxRegion: valuation.taxRegion,
    registrations: valuation.registrations,
    regions: aisleRegions(valuation, stores, true),
    regionNames: [...valuation.regions.values()].map(({ code, name }) => ({ code, name })),
    recheckDays: valuation.recheckDays,
    rates: valuation.rates.rates
      .filter(({ on }) => on >= plusDays(valuation.today, -DAYS_OF_RATES))
      .map((rate) => ({ ...rate, rate: rate.rate.toFixed() })),
    chosenSources: valuation.rates.chosen,
    stores: stores.map((store) => ({
      ...aisleStore(store),
      distanceKm: store.distanceKm?.toFixed() ?? null,
      archivedOn: store.archivedOn,
    })),
    projects: facts.projects.map(({ id, name }) => ({ id, name })),
    materials: [...facts.materials.values()]
      .filter((material) => material.archivedOn === null)
      .map(plain)
      .sort((a, b) => (b.lastSeen ?? "").localeCompare(a.lastSeen ?? "") || a.name.localeCompare(b.name)),
  };
}
