import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { materialOf } from "../exposure/exposure-facts.ts";
import { type Money, money, subtract } from "../money/money.ts";
import type { SourcedGoingPrice } from "../prices/going-price.ts";
import type { Cover } from "../prices/offer.ts";
import { carryingShare } from "../stock/held-saving.ts";
import type { Lot } from "../stock/lot.ts";
import { lotAccount } from "../stock/lot-account.ts";
import { type LotCost, lotCost } from "../stock/lot-cost.ts";
import { type CarriedPayment, carriedPayments } from "./carried-payments.ts";
import { type MakesKnown, makesKnown } from "./makes-known.ts";
import { marketOfDays } from "./market-of-days.ts";
import { rowKey } from "./row-key.ts";
import { type SavingsFacts, savings } from "./savings.ts";
import type { SavingRow } from "./savings-figures.ts";

/** A going price with where it comes from. */
export type GoingWhy = SourcedGoingPrice & Readonly<{ on: LocalDate }>;

/** All that stands behind one row. */
export type WhySaving = Readonly<{
  row: SavingRow;
  lot: Lot;
  cost: LotCost;
  /** Of the row's quantity, what was paid for: found beyond the lot was not. */
  charged: Decimal;
  /** null: no money rate. */
  carried: readonly CarriedPayment[] | null;
  /** Of the row's carrying cost, what its part of the lines above comes to, rounded once; the rest is money for storage. */
  carriedShare: Money | null;
  storage: Money | null;
  /** null for what left otherwise: nothing was replaced on the market. */
  acquisition: GoingWhy | null;
  use: GoingWhy | null;
  /** How the requirement's whole quantity would have been bought that day: the strict figure's measure. */
  cover: Cover | null;
  makesKnown: readonly MakesKnown[];
}>;

/**
 * Why one figure is what it is, as of a day: the row and everything it was reckoned from. null: no such row on that day.
 * Units: home currency. Rounds: as `savings` does. @throws {RangeError} when a material is not among the facts. Source: rules.md R7, R9, R10.
 */
export function whySaving(key: string, day: LocalDate, facts: SavingsFacts): WhySaving | null {
  const row = savings(null, null, day, facts).rows.find((one) => rowKey(one) === key);
  const lot = facts.lots.find(({ id }) => id === row?.lotId);
  if (row === undefined || lot === undefined) return null;
  const { valuation, observations } = facts;
  const material = materialOf(facts, lot.materialId);
  const market = marketOfDays(day, facts);
  const cost = lotCost(lot, material, valuation, day);
  const nothing = money(0, valuation.homeCurrency);
  const account = lotAccount(lot, cost.known ? cost.cost : nothing, facts.events, day);
  const part =
    row.eventId === null
      ? account.holdings.find(({ requirementId }) => requirementId === row.requirementId)
      : account.withdrawals.find(({ event }) => event.id === row.eventId);
  const charged = part?.charged ?? row.quantity;
  const carried = cost.known ? carriedPayments(cost.payments, facts.moneyRates, row.on ?? day) : null;
  const whole =
    carried === null ? null : carried.reduce((all, one) => all.plus(one.carrying.amount), nothing.amount);
  const carriedShare = carryingShare(lot, charged, whole === null ? null : money(whole, nothing.currency));
  const storage =
    row.carrying === null || carriedShare === null ? row.carrying : subtract(row.carrying, carriedShare);
  const isUsed = row.kind === "drawn" || row.kind === "held";
  const going = (on: LocalDate): GoingWhy | null =>
    isUsed ? { ...market.sourcedGoingPrice(material, on), on } : null;
  const requirement = facts.requirements.find(({ id }) => id === row.requirementId);
  return {
    row,
    lot,
    cost,
    charged,
    carried,
    carriedShare,
    storage,
    acquisition: going(row.acquiredOn),
    use: going(row.on ?? day),
    cover: isUsed && requirement ? market.bestCover(material, requirement, row.on ?? day) : null,
    makesKnown: makesKnown(row, { day, material, cost, observations, valuation }),
  };
}
