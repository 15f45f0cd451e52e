import { Decimal, ONE, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { add, type Money, money, roundToMinorUnit } from "../money/money.ts";
import { rateKept } from "../prices/rate-kept.ts";
import { taxShares } from "../prices/tax-shares.ts";
import type { Valuation } from "../prices/valuation.ts";
import { type Disposal, wasteWeight } from "./disposal.ts";

/** Why what waste cost cannot be said. */
export type NoDisposalCost = "weight-unknown" | "tax-unknown" | "region-unknown" | "rate-unknown";

/** cost: without the tax that comes back; cash: with it. Home currency, in minor units. */
export type DisposalCost =
  | Readonly<{ known: true; cost: Money; cash: Money }>
  | Readonly<{ known: false; reason: NoDisposalCost }>;

const TONNE = 1000;
const NO_TAX = { known: true, all: ZERO, cost: ZERO } as const;

/**
 * The disposal fee as charged: per tonne the larger of fee x tonnes and the least charged, per load fee x loads, else the
 * fee itself; null: per tonne and the weight is not known. Units: the disposal's currency. Rounds: never.
 * Source: common practice, a tipping fee per tonne with a minimum (trade.md).
 */
export function disposalFee(
  { feeBasis, fee, least, loads }: Pick<Disposal, "feeBasis" | "fee" | "least" | "loads">,
  kilograms: Decimal | null,
): Decimal | null {
  if (feeBasis === "flat") return fee;
  if (feeBasis === "load") return fee.times(loads ?? ONE);
  return kilograms === null ? null : Decimal.max(fee.times(kilograms).dividedBy(TONNE), least ?? ZERO);
}

/**
 * What getting rid of waste cost a project, all in.
 *     fee  = `disposalFee`;  base = fee without the tax in it
 *     cost = (base + tax that does not come back + hauling) x rate of the day;  cash = the same with all tax
 * Tax, registration and rate are those of its own day, and stay so. Hauling is as paid: nothing of it comes back. Units: home
 * currency. Rounds: once each, half up, to the minor unit. Not known: weight, tax, region, rate. Source: rules.md R1, R3.
 */
export function disposalCost(
  disposal: Disposal,
  material: Material | null,
  valuation: Valuation,
): DisposalCost {
  const { on, currency, hauling, taxIncluded, taxRegion } = disposal;
  const fee = disposalFee(disposal, wasteWeight(disposal, material)?.kilograms ?? null);
  if (fee === null) return { known: false, reason: "weight-unknown" };
  const shares = taxRegion === null ? NO_TAX : taxShares(valuation, taxRegion, [], on);
  if (!shares.known) return { known: false, reason: shares.reason };
  const gross = shares.all.plus(ONE);
  // Written so that a fee with tax in it, of which nothing comes back, is itself to the last digit.
  const cost = taxIncluded
    ? fee.times(shares.cost.plus(ONE)).dividedBy(gross)
    : fee.times(shares.cost.plus(ONE));
  const cash = taxIncluded ? fee : fee.times(gross);
  const rate = rateKept(valuation, currency, valuation.homeCurrency, on);
  if (currency !== valuation.homeCurrency && !rate.known) return { known: false, reason: "rate-unknown" };
  const home = (amount: Decimal): Money => {
    const all = amount.plus(hauling);
    const value = rate.known ? all.times(rate.multiplyBy).dividedBy(rate.divideBy) : all;
    return roundToMinorUnit(money(value, valuation.homeCurrency));
  };
  return { known: true, cost: home(cost), cash: home(cash) };
}

/** What a project spent on disposal until the end of a day. unknown: how many are not in it because their cost is not known. */
export type DisposalTotal = Readonly<{ cost: Money; cash: Money; count: number; unknown: number }>;

/** The sum of what waste cost. Units: home currency. Rounds: nothing further. With `unknown` above zero it is "at least". */
export function disposalTotal(
  disposals: readonly Disposal[],
  materials: ReadonlyMap<string, Material>,
  valuation: Valuation,
  day: Disposal["on"],
): DisposalTotal {
  let cost = money(ZERO, valuation.homeCurrency);
  let cash = cost;
  let unknown = 0;
  const until = disposals.filter(({ on }) => on <= day);
  for (const one of until) {
    const found = disposalCost(one, materials.get(one.materialId ?? "") ?? null, valuation);
    if (!found.known) unknown += 1;
    else {
      cost = add(cost, found.cost);
      cash = add(cash, found.cash);
    }
  }
  return { cost, cash, count: until.length, unknown };
}
