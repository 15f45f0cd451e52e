import type { LocalDate } from "../calendar/local-date.ts";
import { ONE, ZERO } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { Material } from "../materials/material.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import type { Observation } from "../prices/observation.ts";
import type { Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import type { AisleMaterial } from "./aisle-facts.ts";
import { lastPaid } from "./last-paid.ts";
import { usableUnits } from "./usable-units.ts";

/** Each store's cheapest offer for new material in a usual quantity, the cheapest first. */
function cheapestPerStore(offers: readonly Offer[]): Offer[] {
  const byStore = new Map<string, Offer>();
  for (const offer of offers) {
    if (offer.terms === "used" || offer.beforeImportCharges || offer.minQuantity.greaterThan(ONE)) continue;
    const before = byStore.get(offer.storeId);
    if (!before || offer.price.amount.lessThan(before.price.amount)) byStore.set(offer.storeId, offer);
  }
  return [...byStore.values()].sort((a, b) => a.price.amount.comparedTo(b.price.amount));
}

function lastSeen(observations: readonly Observation[]): LocalDate | null {
  return observations.reduce<LocalDate | null>(
    (last, seen) => (last === null || seen.seenOn > last ? seen.seenOn : last),
    null,
  );
}

/**
 * A material with what is known of it today, as text: its units, open need, best offers, going price and last price paid.
 * seen: its own observations. Rounds: never.
 */
export function plainMaterial(
  material: Material,
  seen: readonly Observation[],
  facts: ExposureFacts,
  exposure: WorkspaceExposure,
): AisleMaterial {
  const { offers } = offersOn(exposure.day, seen, material, facts.valuation);
  const going = goingPriceOn(exposure.day, seen, material, facts.valuation);
  const paid = lastPaid(facts, material, exposure.day);
  const open = exposure.projects
    .flatMap((project) => project.lines)
    .filter((line) => line.materialId === material.id)
    .reduce((total, line) => total.plus(line.open), ZERO);
  const project = facts.projects.find((known) => known.id === paid?.projectIds[0]);
  return {
    id: material.id,
    name: material.name,
    category: material.category,
    unit: material.purchaseUnit,
    units: usableUnits(material),
    dimensions: Object.fromEntries(
      Object.entries(material.dimensions).map(([name, size]) => [
        name,
        { value: size.value.toFixed(), unit: size.unit },
      ]),
    ),
    exemptFrom: material.exemptFrom,
    lastSeen: lastSeen(seen),
    open: open.toFixed(),
    best: cheapestPerStore(offers).map((offer) => ({
      storeId: offer.storeId,
      each: offer.price.amount.toFixed(),
      ageDays: offer.ageDays,
    })),
    going: going.known ? { each: going.price.amount.toFixed(), stores: going.stores } : null,
    paid: paid ? { each: paid.each.amount.toFixed(), on: paid.on, project: project?.name ?? null } : null,
  };
}
