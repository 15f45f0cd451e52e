/**
 * Every day limit of the rules stands here and nowhere else: each is judgement, not fact (rules.md, head).
 * Units: calendar days; recheckIntervals counts a material's recheck interval. All limits are reached, not passed: a rate
 * exactly 7 days old is good, a price exactly 365 days old is still a price.
 */
export const DAY_LIMITS = {
  /** A rate stays good over weekends and holidays (R2; the longest gap in the ECB's published rates is 5 days). */
  goodRate: 7,
  /** A rate still serves for today, marked stale (R2). */
  staleRate: 45,
  /** A special, a clearance or a used price without an end holds this long after the day seen (R5). */
  undatedSpecial: 7,
  /** What is older is no price (R5). */
  price: 365,
  /** Recheck intervals that an older or an interpolated going price may reach over (R7). */
  recheckIntervals: 3,
  /** Safety days: so long before a needed-by day, beside lead days, lies the last sensible day to buy (R12). */
  safety: 2,
  /** How long before an offer lapses it is reminded of, where the workspace has not said otherwise. */
  lapseAhead: 3,
  /** How long before the last sensible day to buy it is reminded of. */
  sensibleAhead: 7,
  /** How long before the last day for a return or a price adjustment it is reminded of. */
  lotDayAhead: 7,
  /** How long before a shelf life ends it is reminded of: stock has to find a use first. */
  shelfLifeAhead: 30,
} as const;
