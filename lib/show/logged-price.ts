import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ONE, ZERO } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure.ts";
import type { RequirementExposure, WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { Material } from "../materials/material.ts";
import type { Lowest } from "../prices/lowest-since.ts";
import type { Observation } from "../prices/observation.ts";
import type { LeftOutReason, Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import type { Valuation } from "../prices/valuation.ts";
import { type WhatItMeans, whatItMeans } from "../prices/what-it-means.ts";
import type { Requirement } from "../projects/project.ts";
import { revisionOn } from "../projects/revisions.ts";
import { type LastPaid, lastPaid } from "./last-paid.ts";

/** A requirement of the material that is still open, and how much of it. Purchase units. */
export type OpenNeed = Readonly<{
  requirementId: string;
  projectId: string;
  open: Decimal;
  neededBy: LocalDate;
  acceptsUsed: boolean;
}>;

/** What a price just logged means for the jobs at hand. */
export type LoggedPrice = Readonly<{
  means: WhatItMeans;
  offer: Offer | null;
  /** Why it is no offer, where it is none. */
  leftOut: LeftOutReason | null;
  /** The cheapest single offer at another store: names the store of the comparison. */
  elsewhere: Offer | null;
  paid: LastPaid | null;
  needs: readonly OpenNeed[];
  /** Over all jobs; in purchase units. */
  open: Decimal;
}>;

/** A line of exposure as an open need; null where nothing is open. */
export function openNeedOf(
  { requirementId, projectId, open, neededBy }: RequirementExposure,
  requirement: Requirement | undefined,
  day: LocalDate,
): OpenNeed | null {
  if (open.isZero()) return null;
  const acceptsUsed = requirement ? revisionOn(requirement, day)?.acceptsUsed : false;
  return { requirementId, projectId, open, neededBy, acceptsUsed: acceptsUsed ?? false };
}

/** The needs in the order of their days. */
export function byDayNeeded(needs: readonly OpenNeed[]): OpenNeed[] {
  return [...needs].sort((a, b) => a.neededBy.localeCompare(b.neededBy));
}

function openNeeds(exposure: WorkspaceExposure, facts: ExposureFacts, materialId: string): OpenNeed[] {
  return byDayNeeded(
    exposure.projects
      .flatMap((project) => project.lines)
      .filter((line) => line.materialId === materialId)
      .flatMap((line) => {
        const requirement = facts.requirements.find((known) => known.id === line.requirementId);
        return openNeedOf(line, requirement, exposure.day) ?? [];
      }),
  );
}

/** The cheapest of offers that can be had for a quantity at all, import charges confirmed, used ones only where accepted. */
function cheapest(offers: readonly Offer[], quantity: Decimal, usedToo: boolean): Offer | null {
  const most = quantity.greaterThan(ONE) ? quantity : ONE;
  return offers
    .filter((offer) => !offer.beforeImportCharges && offer.minQuantity.lessThanOrEqualTo(most))
    .filter((offer) => usedToo || offer.terms !== "used")
    .reduce<Offer | null>(
      (best, offer) => (best === null || offer.price.amount.lessThan(best.price.amount) ? offer : best),
      null,
    );
}

/**
 * What a logged price means on a day: held against the best offers elsewhere, the going price, what was last paid and
 * all earlier sightings, for the open need of all live jobs bought together (R6: said here and on no other screen).
 * Rounds: as `whatItMeans` does. Not known: null.
 */
export function loggedPrice(
  observation: Observation,
  history: readonly Observation[],
  exposure: WorkspaceExposure,
  facts: ExposureFacts,
  material: Material,
): LoggedPrice {
  return loggedPriceAmong(observation, history, {
    day: exposure.day,
    material,
    valuation: facts.valuation,
    needs: openNeeds(exposure, facts, material.id),
    paid: lastPaid(facts, material, exposure.day),
  });
}

/** What a logged price is held against, beside what was seen. lowest: where it was told already. */
export type AroundPrice = Readonly<{
  day: LocalDate;
  material: Material;
  valuation: Valuation;
  needs: readonly OpenNeed[];
  paid: LastPaid | null;
  lowest?: Lowest;
}>;

/** `loggedPrice` from the few things it rests on. Rounds: as `whatItMeans` does. Not known: null. */
export function loggedPriceAmong(
  observation: Observation,
  seen: readonly Observation[],
  { day, material, valuation, needs, paid, lowest }: AroundPrice,
): LoggedPrice {
  const others = seen.filter(({ id }) => id !== observation.id);
  const { offers, leftOut } = offersOn(day, [...others, observation], material, valuation);
  const sum = (some: readonly OpenNeed[]) => some.reduce((total, need) => total.plus(need.open), ZERO);
  const open = sum(needs);
  const openUsed = sum(needs.filter((need) => need.acceptsUsed));
  const need = { open, openUsed, lastPaid: paid?.each ?? null };
  return {
    means: whatItMeans(day, observation, others, material, valuation, need, lowest),
    offer: offers.find((found) => found.observationId === observation.id) ?? null,
    leftOut: leftOut.find((left) => left.observationId === observation.id)?.reason ?? null,
    elsewhere: cheapest(
      offers.filter((found) => found.storeId !== observation.storeId),
      open,
      openUsed.isPositive() && !openUsed.isZero(),
    ),
    paid,
    needs,
    open,
  };
}
