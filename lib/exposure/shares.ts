import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import { type Money, money, roundToMinorUnit, sum, times } from "../money/money.ts";
import { split } from "../money/split.ts";
import type { Cover, Take } from "../prices/offer.ts";
import { type OpenNeed, openOf } from "./pools.ts";

/** What covering a need costs: its share, by quantity, of what it was bought together with. Home currency, to the cent. */
export type NeedCost = Readonly<{
  cost: Money | null;
  takes: readonly Take[];
  uncovered: Decimal;
  restsOnStale: Money;
  restsOnLapsing: Money;
  costWithoutLapsing: Money | null;
}>;

/** True for an offer that is gone before a day it is needed on (R6). An open end does not lapse. */
export function lapsesBefore(take: Take, neededBy: LocalDate): boolean {
  return take.offer.lapsesOn !== null && take.offer.lapsesOn < neededBy;
}

function scaled(takes: readonly Take[], part: Decimal, whole: Decimal): readonly Take[] {
  if (part.equals(whole)) return takes;
  return takes.map(({ offer, quantity, cost }) => ({
    offer,
    quantity: quantity.times(part).dividedBy(whole),
    cost: money(cost.amount.times(part).dividedBy(whole), cost.currency),
  }));
}

/**
 * A cover shared back to the needs it is for, by quantity, so that the shares add up to its cost to the cent (R6).
 * without: the cover of the same needs when every offer that lapses before a day is gone; asked only when one is used.
 * Rounds: each amount once, to the minor unit, by largest remainder; takes are scaled, unrounded.
 */
export function sharedCover(
  needs: readonly OpenNeed[],
  cover: Cover,
  without: (neededBy: LocalDate) => Cover,
): NeedCost[] {
  const whole = openOf(needs);
  const weights = needs.map((need) => need.open);
  const { currency } = cover.cost;
  const shares = (amount: Money): readonly Money[] => {
    // Alone, a need bears all of it; nothing has no shares to work out.
    if (weights.length === 1) return [roundToMinorUnit(amount)];
    return amount.amount.isZero() ? weights.map(() => amount) : split(amount, weights);
  };
  const costs = shares(cover.cost);
  const stale = shares(cover.restsOnStale);
  const lapsing = new Map<LocalDate, { rests: readonly Money[]; without: readonly Money[] | null }>();
  const lapsingBy = (neededBy: LocalDate) => {
    const known = lapsing.get(neededBy);
    if (known !== undefined) return known;
    const takes = cover.takes.filter((take) => lapsesBefore(take, neededBy));
    const rests = shares(
      sum(
        takes.map((take) => take.cost),
        currency,
      ),
    );
    const later = takes.length === 0 ? cover : without(neededBy);
    const shared = () => (later === cover ? costs : shares(later.cost));
    const found = { rests, without: later.uncovered.isZero() ? shared() : null };
    lapsing.set(neededBy, found);
    return found;
  };
  const none = times(cover.cost, 0);
  return needs.map((need, index): NeedCost => {
    const { rests, without: later } = lapsingBy(need.neededBy);
    return {
      cost: cover.takes.length === 0 ? null : (costs[index] ?? none),
      takes: scaled(cover.takes, need.open, whole),
      uncovered: cover.uncovered.isZero() ? ZERO : cover.uncovered.times(need.open).dividedBy(whole),
      restsOnStale: stale[index] ?? none,
      restsOnLapsing: rests[index] ?? none,
      costWithoutLapsing: later?.[index] ?? null,
    };
  });
}
