import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ONE, ZERO } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { type Money, subtract } from "../money/money.ts";
import { allInPrice } from "../prices/all-in-price.ts";
import { cheapestCover } from "../prices/cheapest-cover.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import type { Observation } from "../prices/observation.ts";
import type { AllInPrice, LeftOutReason, Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import { type LastPaid, lastPaid } from "./last-paid.ts";

/** A requirement of the material that is still open, and how much of it. Purchase units. */
export type OpenNeed = Readonly<{
  requirementId: string;
  projectId: string;
  open: Decimal;
  neededBy: LocalDate;
}>;

/** What a price just logged means for a buyer, on a day. Money: home currency, unrounded unless said. */
export type LoggedPrice = Readonly<{
  allIn: AllInPrice;
  offer: Offer | null;
  /** Why it is no offer, where it is none. */
  leftOut: LeftOutReason | null;
  lowest: LowestSince;
  elsewhere: Readonly<{ offer: Offer; difference: Money }> | null;
  going: Readonly<{ price: Money; stores: number; difference: Money }> | null;
  paid: LastPaid | null;
  needs: readonly OpenNeed[];
  open: Decimal;
  /** So much of the open need can be had at this offer. */
  covers: Decimal;
  /** Buying `covers` here, and at the best offers elsewhere; each rounded once (R6). */
  here: Money | null;
  there: Money | null;
}>;

/** The newest earlier sighting at or under a price; null with how many sightings when there is none. */
export type LowestSince = Readonly<{ lowerOn: LocalDate | null; sightings: number; first: LocalDate | null }>;

/**
 * Since when no lower price was seen: earlier sightings of other terms than "none-left", each all in at its own day (R2).
 * Used prices are compared with used ones only.
 */
export function lowestSince(
  observation: Observation,
  price: Money,
  history: readonly Observation[],
  material: Material,
  valuation: ExposureFacts["valuation"],
): LowestSince {
  const earlier = history.filter(
    (seen) =>
      seen.id !== observation.id &&
      seen.seenOn < observation.seenOn &&
      (seen.terms === "used") === (observation.terms === "used"),
  );
  let lowerOn: LocalDate | null = null;
  let first: LocalDate | null = null;
  let sightings = 0;
  for (const seen of earlier) {
    const then = allInPrice(seen, material, valuation, seen.seenOn);
    if (!then.known) continue;
    sightings += 1;
    if (first === null || seen.seenOn < first) first = seen.seenOn;
    if (then.price.amount.lessThanOrEqualTo(price.amount) && (lowerOn === null || seen.seenOn > lowerOn))
      lowerOn = seen.seenOn;
  }
  return { lowerOn, sightings, first };
}

function openNeeds(exposure: WorkspaceExposure, materialId: string): OpenNeed[] {
  return exposure.projects
    .flatMap((project) => project.lines)
    .filter((line) => line.materialId === materialId && !line.open.isZero())
    .map(({ requirementId, projectId, open, neededBy }) => ({ requirementId, projectId, open, neededBy }))
    .sort((a, b) => a.neededBy.localeCompare(b.neededBy));
}

function costOf(
  offers: readonly Offer[],
  quantity: Decimal,
  material: Material,
  used: Decimal,
): Money | null {
  const first = offers[0];
  if (first === undefined || quantity.isZero()) return null;
  const cover = cheapestCover(offers, quantity, {
    step: purchaseStep(material.purchaseUnit),
    used,
    currency: first.price.currency,
  });
  return cover.uncovered.isZero() ? cover.cost : null;
}

/** The cheapest of offers that can be had for a quantity at all, import charges confirmed; used ones only among used. */
function cheapestOf(offers: readonly Offer[], quantity: Decimal): Offer | null {
  const most = quantity.greaterThan(ONE) ? quantity : ONE;
  return offers
    .filter((offer) => !offer.beforeImportCharges && offer.minQuantity.lessThanOrEqualTo(most))
    .reduce<Offer | null>(
      (best, offer) => (best === null || offer.price.amount.lessThan(best.price.amount) ? offer : best),
      null,
    );
}

/**
 * What a logged price means: against the best offer elsewhere (difference = elsewhere - here; positive: here is
 * cheaper), the going price (difference = going - here), what was last paid, and the open need of all live projects
 * (bought together: the gain of several jobs is said here and nowhere else, R6).
 * Rounds: `here` and `there` once each, to the minor unit. Not known: null.
 */
export function loggedPrice(
  observation: Observation,
  history: readonly Observation[],
  exposure: WorkspaceExposure,
  facts: ExposureFacts,
  material: Material,
): LoggedPrice {
  const { valuation } = facts;
  const day = exposure.day;
  const allIn = allInPrice(observation, material, valuation, day);
  const seen = facts.observations.filter((other) => other.materialId === material.id);
  const { offers, leftOut } = offersOn(day, seen, material, valuation);
  const offer = offers.find((found) => found.observationId === observation.id) ?? null;
  const elsewhereOffers = offers.filter(
    (found) =>
      found.storeId !== observation.storeId && (found.terms !== "used" || observation.terms === "used"),
  );
  const needs = openNeeds(exposure, material.id);
  const open = needs.reduce((total, need) => total.plus(need.open), ZERO);
  const covers = offer?.maxQuantity?.lessThan(open) ? offer.maxQuantity : open;
  const used = observation.terms === "used" ? covers : ZERO;
  const best = cheapestOf(elsewhereOffers, open);
  const going = goingPriceOn(day, seen, material, valuation);
  const price = allIn.known ? allIn.price : null;
  return {
    allIn,
    offer,
    leftOut: leftOut.find((left) => left.observationId === observation.id)?.reason ?? null,
    lowest: price
      ? lowestSince(observation, price, history, material, valuation)
      : { lowerOn: null, sightings: 0, first: null },
    elsewhere: best && price ? { offer: best, difference: subtract(best.price, price) } : null,
    going:
      going.known && price
        ? { price: going.price, stores: going.stores, difference: subtract(going.price, price) }
        : null,
    paid: lastPaid(facts, material, day),
    needs,
    open,
    covers: offer ? covers : ZERO,
    here: offer ? costOf([offer], covers, material, used) : null,
    there: offer ? costOf(elsewhereOffers, covers, material, used) : null,
  };
}
