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
} as const;
