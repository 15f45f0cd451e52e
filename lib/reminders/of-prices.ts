import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import { type ExposureFacts, groupedBy, materialOf } from "../exposure/exposure-facts.ts";
import type { RequirementExposure } from "../exposure/exposure-figures.ts";
import { add } from "../money/money.ts";
import type { Offer, Take } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import { recheckDays } from "../prices/seen-day.ts";
import { type Reminder, reminderOf, type Wishes } from "./reminder.ts";

/** Whether an offer can be taken at its word by any buyer. */
function isPlain(offer: Offer): boolean {
  return !offer.stale && !offer.beforeImportCharges && offer.terms !== "used";
}

/**
 * Prices at or below what was asked for: at each store the cheapest offer in force, where it is fresh.
 *     price, all in, as of the day <= wanted
 * Never a used one, never one of a foreign store before its import charges, never of an archived material; a wish in another
 * currency than home is not compared. Units: home currency per purchase unit. Rounds: never. Source: rules.md R2, R4, R5.
 */
export function pricesAtOrBelow(day: LocalDate, facts: ExposureFacts, { wanted }: Wishes): Reminder[] {
  const seen = groupedBy(facts.observations, ({ materialId }) => materialId);
  return [...wanted].flatMap(([materialId, wish]) => {
    const material = facts.materials.get(materialId);
    if (material === undefined || material.archivedOn !== null) return [];
    if (wish.currency !== facts.valuation.homeCurrency) return [];
    const { offers } = offersOn(day, seen.get(materialId) ?? [], material, facts.valuation);
    const stores = groupedBy(offers.filter(isPlain), ({ storeId }) => storeId);
    return [...stores.values()].flatMap(([cheapest]) =>
      cheapest === undefined || cheapest.price.amount.greaterThan(wish.amount)
        ? []
        : [
            reminderOf([cheapest.observationId], {
              kind: "price-at-or-below",
              on: cheapest.seenOn,
              materialId,
              unit: cheapest.unit,
              storeId: cheapest.storeId,
              each: cheapest.price,
              wanted: wish,
            }),
          ],
    );
  });
}

/** Takes of one offer together: what open needs lean on it for. */
function leaned(lines: readonly RequirementExposure[]): Take[] {
  const found = new Map<string, Take>();
  for (const take of lines.flatMap((line) => line.takes)) {
    const before = found.get(take.offer.observationId);
    found.set(
      take.offer.observationId,
      before === undefined
        ? take
        : {
            offer: take.offer,
            quantity: before.quantity.plus(take.quantity),
            cost: add(before.cost, take.cost),
          },
    );
  }
  return [...found.values()];
}

/**
 * Offers that open needs lean on: those that lapse within the wished days (the last day counts), and those gone stale, from
 * the first day they are. money, quantity: what leans on the offer over all projects. Units: calendar days. Rounds: never.
 * Source: rules.md R5, R6.
 */
export function offersLeanedOn(
  day: LocalDate,
  lines: readonly RequirementExposure[],
  facts: ExposureFacts,
  { lapseDays }: Wishes,
): Reminder[] {
  return leaned(lines).flatMap(({ offer, quantity, cost }) => {
    const { materialId, storeId, unit, lapsesOn, observationId } = offer;
    const shared = { materialId, storeId, unit, quantity, each: offer.price, money: cost };
    if (lapsesOn !== null && daysBetween(day, lapsesOn) <= lapseDays)
      return [reminderOf([observationId], { kind: "offer-lapsing", on: lapsesOn, ...shared })];
    if (!offer.stale) return [];
    const fresh = recheckDays(materialOf(facts, materialId), facts.valuation);
    const on = plusDays(offer.seenOn, fresh + 1);
    return [reminderOf([observationId], { kind: "price-stale", on, ...shared })];
  });
}

/**
 * Open needs whose last sensible day to buy nears, or has passed.
 *     last sensible day = needed by - the longest lead days of the stores it would be bought at - safety days
 * Units: calendar days; what is open in purchase units. A store that has said no lead days: none. Source: rules.md R12.
 */
export function needsToBuyBy(
  day: LocalDate,
  lines: readonly RequirementExposure[],
  { valuation }: ExposureFacts,
): Reminder[] {
  return lines.flatMap((line) => {
    if (line.open.isZero()) return [];
    const leads = line.takes.map(({ offer }) => valuation.stores.get(offer.storeId)?.leadDays ?? 0);
    const on = plusDays(line.neededBy, -Math.max(0, ...leads) - DAY_LIMITS.safety);
    if (daysBetween(day, on) > DAY_LIMITS.sensibleAhead) return [];
    const { requirementId, projectId, materialId, unit, open: quantity, costToFinish: money } = line;
    const said = { requirementId, projectId, materialId, unit, quantity, money };
    return [reminderOf([requirementId], { kind: "buy-by", on, ...said })];
  });
}
