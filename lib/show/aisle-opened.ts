import type { LocalDate } from "../calendar/local-date.ts";
import { decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { money } from "../money/money.ts";
import type { Observation } from "../prices/observation.ts";
import type { Valuation } from "../prices/valuation.ts";
import { aisleMaterial, aisleValuation } from "./aisle-price.ts";
import { seenOfPlain } from "./aisle-seen.ts";
import type { AisleSnapshot, SnapshotMaterial } from "./aisle-snapshot.ts";
import type { LastPaid } from "./last-paid.ts";
import type { OpenNeed } from "./logged-price.ts";

/** What a snapshot values prices with, on a day: the phone's own, or the one it was taken on where that is later. */
export function snapshotValuation(snapshot: AisleSnapshot, day: LocalDate): Valuation {
  const plain = aisleValuation(snapshot);
  const stores = snapshot.stores.flatMap((store) => {
    const known = plain.stores.get(store.id);
    if (known === undefined) return [];
    const distanceKm = store.distanceKm === null ? null : decimal(store.distanceKm);
    return [[store.id, { ...known, distanceKm, archivedOn: store.archivedOn }] as const];
  });
  return {
    ...plain,
    stores: new Map(stores),
    recheckDays: snapshot.recheckDays,
    rates: { rates: plain.rates.rates, chosen: snapshot.chosenSources },
    today: day > snapshot.today ? day : snapshot.today,
  };
}

/** A material of a snapshot as the core knows it, with what was seen of it, its open needs and what was last paid. */
export type OpenedMaterial = Readonly<{
  material: Material;
  seen: readonly Observation[];
  needs: readonly OpenNeed[];
  paid: LastPaid | null;
}>;

/** Opens one material: only the one at hand is, so that two thousand cost nothing. Rounds: never. */
export function openedMaterial(plain: SnapshotMaterial, snapshot: AisleSnapshot): OpenedMaterial {
  const { paid } = plain;
  return {
    material: { ...aisleMaterial(plain), recheckDays: plain.recheckDays },
    seen: plain.seen.map((seen) => seenOfPlain(seen, plain.id)),
    needs: plain.needs.map((need) => ({ ...need, open: decimal(need.open) })),
    paid: paid === null ? null : { ...paid, each: money(paid.each, snapshot.homeCurrency) },
  };
}
