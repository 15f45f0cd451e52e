/** Every day limit of prices stands here and nowhere else: judgement, not fact (rules.md, head; R5, R7). Units: calendar days. */
export const DAY_LIMITS = {
  /** A special, a clearance or a used price without an end holds through this many days after the day seen (R5). */
  undatedSpecial: 7,
  /** Older than this is no price (R5). */
  noPrice: 365,
  /** Recheck intervals that an older or an interpolated going price may span (R7). */
  recheckIntervals: 3,
} as const;
