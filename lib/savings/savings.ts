import { type LocalDate, within } from "../calendar/local-date.ts";
import { type ExposureFacts, groupedBy } from "../exposure/exposure-facts.ts";
import { lotRows } from "./lot-rows.ts";
import { type MarketOfDays, marketOfDays } from "./market-of-days.ts";
import type { SavingRow, SavingsReport } from "./savings-figures.ts";
import { savingsReport } from "./savings-report.ts";

/** All that savings are computed from. observations: the history back to the oldest lot. */
export type SavingsFacts = ExposureFacts;

function inOrder(a: SavingRow, b: SavingRow): number {
  // What is still held comes last.
  const on = (row: SavingRow) => row.on ?? "9999";
  return on(a) < on(b) ? -1 : on(a) > on(b) ? 1 : 0;
}

/**
 * What buying ahead, catching a special or reusing salvage saved or lost, as of a day: cost avoidance, measured against
 * the going price on the day of use (and, strictly, the best offer in force on it). Realised rows are those of from..until
 * (both counted, null is open); what is held for a requirement on `day` is unrealised, marked on that day. Each unit of a
 * lot stands in at most one row. Losses are rows like any other.
 * Units: home currency. Rounds: four amounts per row (and the best value, the amount received), else sums and differences.
 * market: of that day and those facts, where the caller asks it for more. @throws {RangeError} when a material is not among
 * the facts. Source: rules.md R9-R11.
 */
export function savings(
  from: LocalDate | null,
  until: LocalDate | null,
  day: LocalDate,
  facts: SavingsFacts,
  market: MarketOfDays = marketOfDays(day, facts),
): SavingsReport {
  const currency = facts.valuation.homeCurrency;
  const requirements = new Map(facts.requirements.map((requirement) => [requirement.id, requirement]));
  const events = groupedBy(facts.events, (event) => event.lotId);
  const rows = facts.lots
    .filter((lot) => lot.orderedOn <= day)
    .flatMap((lot) => lotRows(day, lot, events.get(lot.id) ?? [], facts, market, requirements))
    .filter((row) => row.on === null || within(row.on, from, until))
    .sort(inOrder);
  return savingsReport(rows, currency);
}
