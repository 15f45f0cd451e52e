import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import type { ProjectExposure } from "../exposure/exposure-figures.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { add, type Money, money, subtract } from "../money/money.ts";
import type { Terms } from "../prices/observation.ts";
import type { Requirement } from "../projects/project.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";
import { eachOnce, type StandInText, standInTexts } from "./stand-ins.ts";

/** So much of one offer that a project would take today, as text. over: what its pool buys beyond the need. */
export type ToBuy = Readonly<{
  key: string;
  observationId: string;
  /** The first of the needs it serves. */
  requirementId: string;
  materialId: string;
  storeId: string;
  terms: Terms;
  unit: PurchaseUnit;
  quantity: string;
  /** The same as canonical decimal text, to choose the form of a word by. */
  quantityExact: string;
  each: string;
  cost: string;
  ageDays: number;
  stale: boolean;
  lapsesOn: LocalDate | null;
  daysLeft: number | null;
  over: string | null;
  /** What this offer's material stands in for; empty where it is the required one. */
  standIns: readonly StandInText[];
}>;

/**
 * What finishing a project takes from which store at the offers in force, what lapses first on top. requirements: the
 * project's. Rounds: for reading.
 */
export function toBuy(
  project: ProjectExposure,
  requirements: readonly Requirement[],
  day: LocalDate,
  locale: string,
): ToBuy[] {
  const servedBy = (ids: readonly string[]) => requirements.filter(({ id }) => ids.includes(id));
  return project.pools
    .flatMap((pool) =>
      pool.takes.map(({ offer, quantity, cost }, index) => ({
        key: `${pool.requirementIds.join("+")} ${offer.observationId}`,
        observationId: offer.observationId,
        requirementId: pool.requirementIds[0] ?? "",
        materialId: offer.materialId,
        storeId: offer.storeId,
        terms: offer.terms,
        unit: offer.unit,
        quantity: quantityText(quantity, locale),
        quantityExact: quantity.toFixed(),
        each: unitPriceText(offer.price, locale),
        cost: moneyText(cost, locale),
        ageDays: offer.ageDays,
        stale: offer.stale || offer.staleRate,
        lapsesOn: offer.lapsesOn,
        daysLeft: offer.lapsesOn === null ? null : daysBetween(day, offer.lapsesOn),
        standIns: eachOnce(standInTexts(servedBy(pool.requirementIds), [offer.materialId], locale)),
        over: index > 0 || pool.over.isZero() ? null : quantityText(pool.over, locale),
      })),
    )
    .sort((a, b) => (a.daysLeft ?? Infinity) - (b.daysLeft ?? Infinity) || 0);
}

/**
 * What a project's cost to finish leans on, as text. lapsing: on offers that end before they are needed; withoutLapsing:
 * what finishing costs more when those are gone, null when that is not known (something is then not covered at all).
 */
export type RestsText = Readonly<{
  stale: string | null;
  lapsing: string | null;
  withoutLapsing: string | null;
}>;

function moreWithout(project: ProjectExposure, zero: Money): Money | null {
  const lines = project.lines.filter((line) => !line.restsOnLapsing.amount.isZero());
  return lines.reduce<Money | null>(
    (total, { costWithoutLapsing, costToFinish }) =>
      total === null || costWithoutLapsing === null || costToFinish === null
        ? null
        : add(total, subtract(costWithoutLapsing, costToFinish)),
    zero,
  );
}

/** What leans on stale prices and on offers that lapse too early (R6). Rounds: nothing further. */
export function restsText(project: ProjectExposure, locale: string): RestsText {
  const { restsOnStale, restsOnLapsing } = project.totals;
  const some = (value: Money) => (value.amount.isZero() ? null : moneyText(value, locale));
  const more = restsOnLapsing.amount.isZero()
    ? null
    : moreWithout(project, money(ZERO, restsOnLapsing.currency));
  return {
    stale: some(restsOnStale),
    lapsing: some(restsOnLapsing),
    withoutLapsing: more === null ? null : moneyText(more, locale),
  };
}
