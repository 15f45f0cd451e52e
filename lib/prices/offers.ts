import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { type Decimal, roundUpToStep } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { allInPrice } from "./all-in-price.ts";
import { lacksImportCharges } from "./foreign-store.ts";
import { type Standing, standingAt, tierOf } from "./in-force.ts";
import type { Observation } from "./observation.ts";
import type { LeftOut, LeftOutReason, Offer } from "./offer.ts";
import { recheckDays } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";
import { wholePacks } from "./whole-packs.ts";

/** Offers of a day, and every sighting known on it that is none, with its reason. */
export type OffersOfDay = Readonly<{ offers: Offer[]; leftOut: LeftOut[] }>;

function byStore(observations: readonly Observation[], material: Material): Map<string, Observation[]> {
  const stores = new Map<string, Observation[]>();
  for (const observation of observations) {
    if (observation.materialId !== material.id) continue;
    const seen = stores.get(observation.storeId);
    if (seen) seen.push(observation);
    else stores.set(observation.storeId, [observation]);
  }
  return stores;
}

/** A sighting in force as an offer, or why it is none. */
function offerOf(
  { observation, seen, lapses }: Standing,
  day: LocalDate,
  material: Material,
  valuation: Valuation,
  step: Decimal,
): Offer | LeftOutReason {
  const store = valuation.stores.get(observation.storeId);
  if (store === undefined) return "store-unknown";
  if (store.archivedOn !== null && store.archivedOn <= day) return "archived-store";
  const packSize = observation.packSize ?? step;
  const minQuantity = roundUpToStep(tierOf(observation, step), packSize);
  const maxQuantity = observation.maxQuantity === null ? null : wholePacks(observation.maxQuantity, packSize);
  if (maxQuantity?.lessThan(minQuantity)) return "nothing-left-of-it";
  const price = allInPrice(observation, material, valuation, day);
  if (!price.known) return price.reason;
  const ageDays = daysBetween(seen, day);
  return {
    observationId: observation.id,
    materialId: material.id,
    storeId: observation.storeId,
    terms: observation.terms,
    seenOn: observation.seenOn,
    ageDays,
    stale: observation.until === null && ageDays > recheckDays(material, valuation),
    price: price.price,
    beforeTax: price.beforeTax,
    cash: price.cash,
    unit: price.unit,
    minQuantity,
    maxQuantity,
    packSize,
    lapsesOn: lapses,
    orderCharges: price.orderCharges,
    beforeImportCharges: lacksImportCharges(store, valuation),
    staleRate: price.staleRate,
    distanceKm: store.distanceKm,
  };
}

/**
 * What the sightings of a material mean for a buyer on a day (R5): offers in force, valued as of the day (R2), and every
 * other sighting made by then with the reason it is left out. Several offers of a store may be in force. Sightings made
 * after the day are not known on it and change nothing (R11). Foreign offers without confirmed import charges are among
 * the offers, marked. Quantities: purchase units, in whole packs. Rounds: minimum up and maximum down to whole packs.
 * Order: by price, then the fresher, then by id; it does not depend on the order of the observations.
 */
export function offersOn(
  day: LocalDate,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
): OffersOfDay {
  const step = purchaseStep(material.purchaseUnit);
  const offers: Offer[] = [];
  const leftOut: LeftOut[] = [];
  for (const atStore of byStore(observations, material).values()) {
    for (const standing of standingAt(day, atStore, valuation, step)) {
      const { id, storeId } = standing.observation;
      const found = standing.reason ?? offerOf(standing, day, material, valuation, step);
      if (typeof found === "string") leftOut.push({ observationId: id, storeId, reason: found });
      else offers.push(found);
    }
  }
  offers.sort(
    (a, b) =>
      a.price.amount.comparedTo(b.price.amount) ||
      a.ageDays - b.ageDays ||
      (a.observationId < b.observationId ? -1 : 1),
  );
  leftOut.sort((a, b) => (a.observationId < b.observationId ? -1 : 1));
  return { offers, leftOut };
}
