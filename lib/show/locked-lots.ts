import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { add, type Money, money } from "../money/money.ts";
import type { Lot } from "../stock/lot.ts";
import { lotAccount } from "../stock/lot-account.ts";
import { lotCost } from "../stock/lot-cost.ts";
import { type CountText, someText } from "./count-text.ts";
import { moneyText, quantityText } from "./money-text.ts";

/** What one lot gives to some requirements, as text. Quantities in the lot's purchase units; null: none, or not known. */
export type LockedLot = Readonly<{
  lotId: string;
  materialId: string;
  unit: PurchaseUnit;
  origin: Lot["origin"];
  orderedOn: LocalDate;
  storedAt: string | null;
  /** Those of the requirements it serves. */
  requirementIds: readonly string[];
  setAside: CountText | null;
  used: CountText | null;
  onOrder: string | null;
  cost: string | null;
}>;

type Sums = { setAside: Decimal; used: Decimal; onOrder: Decimal; cost: Money; served: Set<string> };

/** What a lot holds for, and has given to, the requirements at the end of a day. */
function sumsOf(
  lot: Lot,
  cost: Money,
  facts: ExposureFacts,
  day: LocalDate,
  requirementIds: ReadonlySet<string>,
): Sums {
  const { withdrawals, holdings } = lotAccount(lot, cost, facts.events, day);
  const served = new Set<string>();
  const sums: Sums = { setAside: ZERO, used: ZERO, onOrder: ZERO, cost: money(ZERO, cost.currency), served };
  const serves = (id: string | null): id is string => id !== null && requirementIds.has(id);
  for (const { event, quantity, cost: part } of withdrawals) {
    if (event.kind !== "drawn" || !serves(event.requirementId)) continue;
    served.add(event.requirementId);
    sums.used = sums.used.plus(quantity);
    sums.cost = add(sums.cost, part);
  }
  for (const holding of holdings) {
    if (!serves(holding.requirementId)) continue;
    served.add(holding.requirementId);
    sums.setAside = sums.setAside.plus(holding.quantity);
    sums.onOrder = sums.onOrder.plus(holding.onOrder);
    sums.cost = add(sums.cost, holding.cost);
  }
  return sums;
}

/**
 * The lots that some requirements are locked in with on a day, the oldest first, with what each gave and its part of the
 * cost (R8, R9). Rounds: the parts as in `lotAccount`; the rest is for reading.
 */
export function lockedLots(
  day: LocalDate,
  facts: ExposureFacts,
  requirementIds: ReadonlySet<string>,
  locale: string,
): LockedLot[] {
  const nothing = money(ZERO, facts.valuation.homeCurrency);
  const some = (value: Decimal) => (value.isZero() ? null : quantityText(value, locale));
  return facts.lots
    .filter((lot) => lot.orderedOn <= day)
    .flatMap((lot) => {
      const material = facts.materials.get(lot.materialId);
      if (material === undefined) return [];
      const cost = lotCost(lot, material, facts.valuation, day);
      const sums = sumsOf(lot, cost.known ? cost.cost : nothing, facts, day, requirementIds);
      if (sums.setAside.isZero() && sums.used.isZero()) return [];
      return [
        {
          lotId: lot.id,
          materialId: lot.materialId,
          unit: material.purchaseUnit,
          origin: lot.origin,
          orderedOn: lot.orderedOn,
          storedAt: lot.storedAt,
          requirementIds: [...sums.served],
          setAside: someText(sums.setAside, locale),
          used: someText(sums.used, locale),
          onOrder: some(sums.onOrder),
          cost: cost.known ? moneyText(sums.cost, locale) : null,
        },
      ];
    })
    .sort((a, b) => a.orderedOn.localeCompare(b.orderedOn));
}
