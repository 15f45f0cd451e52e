import { type LocalDate, localDate, plusDays } from "../calendar/local-date.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Money } from "../money/money.ts";
import type { Lot } from "../stock/lot.ts";
import { replay } from "../stock/replay.ts";
import { lotRows } from "./lot-rows.ts";
import { type MarketOfDays, marketOfDays } from "./market-of-days.ts";
import { savingTotals } from "./saving-totals.ts";
import type { SavingsFacts } from "./savings.ts";

/** What was held for requirements on a day, against that day's going prices. notKnown: how many holdings say nothing. */
export type HeldOn = Readonly<{ on: LocalDate; unrealised: Money; notKnown: number }>;

/** Which holdings count; null: all. */
export type HeldOf = Readonly<{ projectId: string | null; materialId: string | null }>;

/** So many days at most are marked between the first lot and the last day; fewer where many lots make each one long work. */
const MOST_MARKS = 12;
const MANY_LOTS = 1000;
const MOST_OF_MANY = 5;

/** The first of a month so many months after another day's. */
function monthAfter(day: LocalDate, months: number): LocalDate {
  const [year = 0, month = 1] = day.split("-").map(Number);
  const count = year * MONTHS + month - 1 + months;
  const text = `${Math.floor(count / MONTHS)}-${String((count % MONTHS) + 1).padStart(2, "0")}-01`;
  return localDate(text.padStart("2026-01-01".length, "0"));
}
const MONTHS = 12;

/** Ends of months from one day to another, every so many that no more than `most` stand, and the last day itself. */
export function marksBetween(from: LocalDate, until: LocalDate, most = MOST_MARKS): LocalDate[] {
  for (const every of [1, 2, 3, 6, MONTHS, MONTHS * 5]) {
    const days: LocalDate[] = [];
    for (let month = 1; days.length < most; month += every) {
      const end = plusDays(monthAfter(from, month), -1);
      if (end >= until) return [...days, until];
      if (end >= from) days.push(end);
    }
  }
  return [until];
}

/** The days a picture of some lots marks: from the first of them, or from a later first day asked for. */
export function marksOfLots(
  lots: readonly Pick<Lot, "orderedOn">[],
  from: LocalDate | null,
  day: LocalDate,
): LocalDate[] {
  const ordered = lots.map(({ orderedOn }) => orderedOn).filter((on) => on <= day);
  const first = ordered.sort()[0];
  if (first === undefined) return [];
  const most = lots.length > MANY_LOTS ? MOST_OF_MANY : MOST_MARKS;
  return marksBetween(from === null || from < first || from > day ? first : from, day, most);
}

/**
 * The unrealised saving on one day, as of that day: what `savings` of that day says of held quantities. What came after
 * the day is not known on it (R11). Units: home currency. Rounds: as rows do.
 * @throws {RangeError} when a material is not among the facts. Source: rules.md R10, R11.
 */
export function heldOn(on: LocalDate, facts: SavingsFacts, { projectId, materialId }: HeldOf): HeldOn {
  const { homeCurrency } = facts.valuation;
  const { goingPrice, ...market } = marketOfDays(on, facts);
  // Only the day's own prices mark what is held; the rest of a row is not looked at here.
  const thatDay: MarketOfDays = {
    ...market,
    goingPrice: (material, day) => (day === on ? goingPrice(material, day) : { known: false }),
    bestValue: () => null,
  };
  const requirements = new Map(facts.requirements.map((requirement) => [requirement.id, requirement]));
  const events = groupedBy(facts.events, (event) => event.lotId);
  const rows = facts.lots
    .filter((lot) => lot.orderedOn <= on && (materialId === null || lot.materialId === materialId))
    .filter((lot) => replay(lot, events.get(lot.id) ?? [], on).balance.allocated.size > 0)
    .flatMap((lot) => lotRows(on, lot, events.get(lot.id) ?? [], facts, thatDay, requirements))
    .filter((row) => row.kind === "held" && (projectId === null || row.projectId === projectId));
  const { saving, notKnown } = savingTotals(rows, homeCurrency);
  return { on, unrealised: saving, notKnown };
}
