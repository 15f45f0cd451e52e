import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Observation, Terms } from "./observation.ts";
import type { LeftOutReason } from "./offer.ts";
import { bySighting, seenDay } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";

/** Last day a sighting is known to hold; null: open (shelf, quantity break). A quote without an end holds no day (R5). */
export function lapsesOn(observation: Observation, seen: LocalDate): LocalDate | null {
  if (observation.until !== null) return observation.until;
  if (observation.terms === "shelf" || observation.terms === "quantity-break") return null;
  return plusDays(seen, observation.terms === "quote" ? -1 : DAY_LIMITS.undatedSpecial);
}

/** A price that holds until the next one of its tier is seen, not for a number of days. */
function holdsUntilNext(terms: Terms): boolean {
  return terms === "shelf" || terms === "quantity-break";
}

/** The smallest quantity a sighting is for; none stated: one step. Prices of one tier replace each other. */
export function tierOf(observation: Observation, step: Decimal): Decimal {
  const { minQuantity } = observation;
  return minQuantity === null || minQuantity.lessThan(step) ? step : minQuantity;
}

type Sighting = Readonly<{ observation: Observation; seen: LocalDate; lapses: LocalDate | null }>;

/** Why a sighting by itself does not hold on the day: its kind, its age or its dates. */
function ownReason({ observation, seen, lapses }: Sighting, day: LocalDate): LeftOutReason | null {
  if (observation.terms === "paid") return "receipt";
  if (observation.terms === "none-left") return "none-left";
  if (daysBetween(seen, day) > DAY_LIMITS.price) return "too-old";
  if (lapses !== null && lapses < day) return "lapsed";
  if (observation.from !== null && observation.from > day) return "not-yet";
  return null;
}

/**
 * True when a newer sighting takes the place of an older one (both of one store, the newer one's `from` reached).
 * Shelf and quantity break: any newer one of the tier. Without a stated end: one of the same terms on a later day, or of
 * the same tier on the same day. With a stated end: only while the newer one of the tier is itself in force.
 */
function replaces(newer: Sighting, older: Sighting, day: LocalDate, step: Decimal): boolean {
  const a = newer.observation;
  const b = older.observation;
  if (a.terms !== b.terms || (a.from !== null && a.from > day)) return false;
  const sameTier = tierOf(a, step).equals(tierOf(b, step));
  if (holdsUntilNext(b.terms)) return sameTier;
  if (b.until === null && newer.seen > older.seen) return true;
  return sameTier && ownReason(newer, day) === null;
}

export type Standing = Readonly<{
  observation: Observation;
  seen: LocalDate;
  lapses: LocalDate | null;
  /** null: in force. */
  reason: LeftOutReason | null;
}>;

/**
 * How each sighting of one material at one store stands on a day: in force, or why not (R5). Sightings made after the
 * day are not known yet and are not answered at all (R11). step: smallest quantity that can be bought.
 * Order: oldest sighting first; of one day, by id.
 */
export function standingAt(
  day: LocalDate,
  atStore: readonly Observation[],
  valuation: Valuation,
  step: Decimal,
): Standing[] {
  const sightings: Sighting[] = [];
  for (const observation of atStore) {
    const seen = seenDay(observation, valuation);
    if (seen <= day) sightings.push({ observation, seen, lapses: lapsesOn(observation, seen) });
  }
  sightings.sort((a, b) => bySighting(a.observation, b.observation));
  const noneLeft = sightings.findLastIndex(({ observation }) => observation.terms === "none-left");
  return sightings.map((sighting, index) => {
    let reason = ownReason(sighting, day);
    if (reason === null && index < noneLeft) reason = "none-left";
    for (let at = index + 1; reason === null && at < sightings.length; at += 1) {
      const newer = sightings[at];
      if (newer !== undefined && replaces(newer, sighting, day, step)) reason = "replaced";
    }
    return { ...sighting, reason };
  });
}
