import type { LocalDate } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import { add, type Money } from "../money/money.ts";
import type { Valuation } from "../prices/valuation.ts";
import { type Disposal, type WasteKind, wasteWeight } from "../projects/disposal.ts";
import { disposalCost, disposalTotal, type NoDisposalCost } from "../projects/disposal-cost.ts";
import { dayText } from "./day-text.ts";
import { moneyText, quantityText } from "./money-text.ts";

/** Waste gotten rid of, for reading. weight null, cost null: not known; unknown says why the cost is not. */
export type WasteRowText = Readonly<{
  id: string;
  kind: WasteKind;
  on: string;
  weight: Readonly<{ kilograms: string; from: "weighed" | "material"; source: string | null }> | null;
  cost: string | null;
  unknown: NoDisposalCost | null;
  note: string | null;
}>;

/** Rows of waste until the end of a day. Rounds: money to the minor unit, weight to 0.001 kg. */
export function wasteRows(
  disposals: readonly Disposal[],
  materials: ReadonlyMap<string, Material>,
  valuation: Valuation,
  day: LocalDate,
  locale: string,
): WasteRowText[] {
  return disposals
    .filter(({ on }) => on <= day)
    .map((disposal) => {
      const material = materials.get(disposal.materialId ?? "") ?? null;
      const weight = wasteWeight(disposal, material);
      const cost = disposalCost(disposal, material, valuation);
      return {
        id: disposal.id,
        kind: disposal.kind,
        on: dayText(disposal.on, locale),
        weight: weight && { ...weight, kilograms: quantityText(weight.kilograms, locale) },
        cost: cost.known ? moneyText(cost.cost, locale) : null,
        unknown: cost.known ? null : cost.reason,
        note: disposal.note,
      };
    });
}

/** What a project spent on disposal beside its estimate; atLeast: something in the sum is not known. cash null: no tax comes back. */
export type WasteTotalText = Readonly<{
  spent: string;
  cash: string | null;
  estimate: string | null;
  together: string | null;
  atLeast: boolean;
  count: number;
  unknown: number;
}>;

/** The sum of waste, and the estimate at completion with it (the estimate itself stays as it is, R8). Rounds: to the minor unit. */
export function wasteTotalText(
  disposals: readonly Disposal[],
  materials: ReadonlyMap<string, Material>,
  valuation: Valuation,
  day: LocalDate,
  estimate: Readonly<{ amount: Money; complete: boolean }> | null,
  locale: string,
): WasteTotalText {
  const { cost, cash, count, unknown } = disposalTotal(disposals, materials, valuation, day);
  return {
    spent: moneyText(cost, locale),
    cash: cash.amount.equals(cost.amount) ? null : moneyText(cash, locale),
    estimate: estimate === null ? null : moneyText(estimate.amount, locale),
    together: estimate === null ? null : moneyText(add(estimate.amount, cost), locale),
    atLeast: unknown > 0 || estimate?.complete === false,
    count,
    unknown,
  };
}
