import type { LocalDate } from "../calendar/local-date.ts";
import { exposure } from "../exposure/exposure.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import { lotsWithALastDay } from "./of-lots.ts";
import { needsToBuyBy, offersLeanedOn, pricesAtOrBelow } from "./of-prices.ts";
import { REMINDER_KINDS, type Reminder, type Wishes } from "./reminder.ts";

function order(one: Reminder, other: Reminder): number {
  if (one.on !== other.on) return one.on < other.on ? -1 : 1;
  const kinds = REMINDER_KINDS.indexOf(one.kind) - REMINDER_KINDS.indexOf(other.kind);
  if (kinds !== 0) return kinds;
  return one.key < other.key ? -1 : one.key > other.key ? 1 : 0;
}

/**
 * Everything to be reminded of at the end of a day, each thing once, the earliest day first: prices at or below what was asked
 * for, offers about to lapse and stale prices that open needs lean on, needs whose last sensible day to buy nears, lots whose
 * day for a return, a price adjustment or use nears. Facts of later days change nothing (R11). observations: every offer in
 * force on the day. Units: calendar days, home currency. Rounds: as exposure does. Throws: as exposure does.
 * Source: rules.md R5, R6, R9, R11, R12.
 */
export function reminders(day: LocalDate, facts: ExposureFacts, wishes: Wishes): Reminder[] {
  const lines = exposure(day, facts).projects.flatMap((project) => project.lines);
  const found = [
    ...pricesAtOrBelow(day, facts, wishes),
    ...offersLeanedOn(day, lines, facts, wishes),
    ...needsToBuyBy(day, lines, facts),
    ...lotsWithALastDay(day, facts),
  ];
  return [...new Map(found.map((one) => [one.key, one])).values()].sort(order);
}
