import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { HUNDRED, ONE } from "../decimal.ts";
import type { ExposureRemark, RequirementExposure } from "../exposure/exposure-figures.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { times } from "../money/money.ts";
import type { Offer } from "../prices/offer.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";

/** What a requirement would be bought at now, as text. The age is the oldest sighting among the offers taken. */
export type NowText = Readonly<{
  each: string;
  ageDays: number;
  stale: boolean;
  storeIds: readonly string[];
  lapsesOn: LocalDate | null;
}>;

/** One line of a project's table: text for reading, bare numbers only for days and the gauge. */
export type RequirementRow = Readonly<{
  requirementId: string;
  projectId: string;
  materialId: string;
  unit: PurchaseUnit;
  needed: string;
  /** The same as canonical decimal text, to choose the form of a word by. */
  neededExact: string;
  lockedIn: string;
  open: string;
  /** Is anything still to buy? */
  isOpen: boolean;
  onOrder: string | null;
  surplus: string | null;
  /** Locked in per hundred of the need, 0 to 100. */
  lockedPercent: number;
  paidEach: string | null;
  now: NowText | null;
  toFinish: string | null;
  uncovered: string | null;
  neededBy: LocalDate;
  daysLeft: number;
  budget: string | null;
  remarks: readonly ExposureRemark[];
}>;

function oldest(offers: readonly Offer[]): Offer | null {
  return offers.reduce<Offer | null>(
    (found, offer) => (found === null || offer.ageDays > found.ageDays ? offer : found),
    null,
  );
}

function firstLapse(offers: readonly Offer[]): LocalDate | null {
  const days = offers.flatMap((offer) => (offer.lapsesOn === null ? [] : [offer.lapsesOn])).sort();
  return days[0] ?? null;
}

function nowText(line: RequirementExposure, locale: string): NowText | null {
  const offers = line.takes.map((take) => take.offer);
  const last = oldest(offers);
  if (last === null || line.bestUnitPrice === null) return null;
  return {
    each: unitPriceText(line.bestUnitPrice, locale),
    ageDays: last.ageDays,
    stale: offers.some((offer) => offer.stale || offer.staleRate),
    storeIds: [...new Set(offers.map((offer) => offer.storeId))],
    lapsesOn: firstLapse(offers),
  };
}

/** Locked in per hundred of the need, a whole number from 0 to 100; 99 at most while anything is open. */
function lockedPercent(line: RequirementExposure): number {
  if (!line.required.isPositive() || line.required.isZero()) return 100;
  const share = line.lockedIn.times(HUNDRED).dividedBy(line.required).floor().toNumber();
  return Math.min(share, line.open.isZero() ? 100 : 99);
}

/**
 * A requirement's figures as text. paidEach = lockedCost / lockedIn, for reading only.
 * Rounds: money to the minor unit, quantities to 0.001, for reading; sums are made before. Not known: null, never zero.
 */
export function requirementRow(line: RequirementExposure, day: LocalDate, locale: string): RequirementRow {
  const some = (value: RequirementExposure["open"]) => (value.isZero() ? null : quantityText(value, locale));
  return {
    requirementId: line.requirementId,
    projectId: line.projectId,
    materialId: line.materialId,
    unit: line.unit,
    needed: quantityText(line.required, locale),
    neededExact: line.required.toFixed(),
    lockedIn: quantityText(line.lockedIn, locale),
    open: quantityText(line.open, locale),
    isOpen: !line.open.isZero(),
    onOrder: some(line.onOrder),
    surplus: some(line.surplus),
    lockedPercent: lockedPercent(line),
    paidEach: line.lockedIn.isZero()
      ? null
      : unitPriceText(times(line.lockedCost, ONE.dividedBy(line.lockedIn)), locale),
    now: nowText(line, locale),
    toFinish: line.costToFinish === null ? null : moneyText(line.costToFinish, locale),
    uncovered: some(line.uncovered),
    neededBy: line.neededBy,
    daysLeft: daysBetween(day, line.neededBy),
    budget: line.budget === null ? null : moneyText(line.budget, locale),
    remarks: line.remarks,
  };
}

/** The lines of a project in needed-by order, what is still open before what is covered. */
export function requirementRows(
  lines: readonly RequirementExposure[],
  day: LocalDate,
  locale: string,
): RequirementRow[] {
  const rows = lines.map((line) => requirementRow(line, day, locale));
  const order = (row: RequirementRow) => `${row.isOpen ? 0 : 1}${row.neededBy}`;
  return rows.sort((a, b) => order(a).localeCompare(order(b)));
}
