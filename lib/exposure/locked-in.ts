import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ONE, ZERO } from "../decimal.ts";
import { add, type Money, money } from "../money/money.ts";
import type { GoingPrice } from "../prices/offer.ts";
import type { Requirement } from "../projects/project.ts";
import { standInFactor } from "../projects/stands-in.ts";
import { carryingCost } from "../stock/carrying.ts";
import { carryingShare, goingValue, stockSaving } from "../stock/held-saving.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotAccount } from "../stock/lot-account.ts";
import { lotCost } from "../stock/lot-cost.ts";
import { type ExposureFacts, groupedBy } from "./exposure-facts.ts";
import type { ExposureRemark } from "./exposure-figures.ts";

/** What is locked in for one requirement. Quantities in the required material's purchase units; home currency. */
export type LockedIn = Readonly<{
  allocated: Decimal;
  drawn: Decimal;
  onOrder: Decimal;
  cost: Money;
  /** Of what is allocated and not drawn; null when a going price or a lot's cost is not known. */
  unrealisedSaving: Money | null;
  remarks: readonly ExposureRemark[];
}>;

type Sum = { -readonly [K in keyof LockedIn]: LockedIn[K] };

/** Nothing locked in. */
export function nothingLockedIn(zero: Money): LockedIn {
  return { allocated: ZERO, drawn: ZERO, onOrder: ZERO, cost: zero, unrealisedSaving: zero, remarks: [] };
}

function remark(sum: Sum, code: ExposureRemark): void {
  if (!sum.remarks.includes(code)) sum.remarks = [...sum.remarks, code];
}

/**
 * What is locked in, by requirement, at the end of a day: allocated and not yet drawn, and drawn for it, at the lots' own
 * cost (R8). A lot of an accepted alternative counts as quantity / factor; of any other material its cost counts and its
 * quantity does not. Rounds: costs as in `lotAccount`; the rest never. goingNow: the going price of the day, by material.
 */
export function lockedInOn(
  day: LocalDate,
  facts: ExposureFacts,
  goingNow: (materialId: string) => GoingPrice,
): ReadonlyMap<string, LockedIn> {
  const requirements = new Map(facts.requirements.map((requirement) => [requirement.id, requirement]));
  const currency = facts.valuation.homeCurrency;
  const zero = money(ZERO, currency);
  const sums = new Map<string, Sum>();
  const sumFor = (id: string): Sum => {
    const sum = sums.get(id) ?? { ...nothingLockedIn(zero) };
    sums.set(id, sum);
    return sum;
  };
  const known = (id: string | null): Requirement | undefined =>
    id === null ? undefined : requirements.get(id);
  const events = groupedBy(facts.events, (event) => event.lotId);
  for (const lot of facts.lots) {
    const own = events.get(lot.id);
    if (lot.orderedOn > day || !own?.some((event) => known(event.requirementId))) continue;
    addLot(lot, own);
  }
  return sums;

  function addLot(lot: Lot, own: readonly StockEvent[]): void {
    const material = facts.materials.get(lot.materialId);
    if (material === undefined)
      throw new RangeError(`the material ${lot.materialId} of lot ${lot.id} is not among the facts`);
    const reckoned = lotCost(lot, material, facts.valuation, day);
    const carrying = reckoned.known ? carryingCost(reckoned.payments, facts.moneyRates, day, currency) : null;
    const account = lotAccount(lot, reckoned.known ? reckoned.cost : zero, own, day);
    const count = (
      requirement: Requirement,
      quantity: Decimal,
      cost: Money,
    ): { sum: Sum; counted: Decimal } => {
      const sum = sumFor(requirement.id);
      const factor = standInFactor(requirement, lot.materialId);
      if (factor === null) remark(sum, "other-material-locked-in");
      if (!reckoned.known) remark(sum, "lot-cost-unknown");
      sum.cost = add(sum.cost, cost);
      if (factor === null) return { sum, counted: ZERO };
      return { sum, counted: factor.equals(ONE) ? quantity : quantity.dividedBy(factor) };
    };
    for (const { event, quantity, cost } of account.withdrawals) {
      const requirement = event.kind === "drawn" ? known(event.requirementId) : undefined;
      if (requirement === undefined) continue;
      const { sum, counted } = count(requirement, quantity, cost);
      sum.drawn = sum.drawn.plus(counted);
    }
    for (const holding of account.holdings) {
      const requirement = known(holding.requirementId);
      if (requirement === undefined) continue;
      const { sum, counted } = count(requirement, holding.quantity, holding.cost);
      sum.allocated = sum.allocated.plus(counted);
      if (!holding.onOrder.isZero())
        sum.onOrder = sum.onOrder.plus(counted.times(holding.onOrder).dividedBy(holding.quantity));
      const value = reckoned.known ? goingValue(lot, holding.quantity, goingNow(lot.materialId)) : null;
      const saving = stockSaving(value, holding.cost, carryingShare(lot, holding.charged, carrying));
      sum.unrealisedSaving =
        saving === null || sum.unrealisedSaving === null ? null : add(sum.unrealisedSaving, saving);
    }
  }
}
