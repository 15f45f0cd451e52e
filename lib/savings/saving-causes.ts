import type { CurrencyCode } from "../money/currencies.ts";
import { add, type Money, money, subtract, sum } from "../money/money.ts";
import { beforeCarrying } from "./saving-parts.ts";
import type { SavingRow } from "./savings-figures.ts";

/** What made a saving or a loss, in the order a report names it. */
export const SAVING_CAUSES = [
  "choice-of-store",
  "special",
  "quote",
  "quantity-break",
  "salvage",
  "timing",
  "not-split",
  "returned",
  "sold",
  "written-off",
  "carrying",
] as const;
export type SavingCause = (typeof SAVING_CAUSES)[number];

/** One line of a breakdown. rows: how many rows have a part in it. amount = realised + unrealised. */
export type SavingBreakdownLine = Readonly<{
  cause: SavingCause;
  realised: Money;
  unrealised: Money;
  amount: Money;
  rows: number;
}>;

/** To what terms a discount belongs, wholly (R10): a special order at ordinary terms is a choice of store, too. */
const DISCOUNTS: Readonly<Record<SavingRow["source"], SavingCause>> = {
  bought: "choice-of-store",
  "special-order": "choice-of-store",
  "choice-of-store": "choice-of-store",
  shelf: "choice-of-store",
  paid: "choice-of-store",
  "none-left": "choice-of-store",
  special: "special",
  clearance: "special",
  quote: "quote",
  "quantity-break": "quantity-break",
  used: "salvage",
  salvaged: "salvage",
  "left-over": "salvage",
};

type Part = Readonly<{ cause: SavingCause; amount: Money }>;

/**
 * What a row's saving is made of; nothing when it is not known.
 *     drawn or held:  discount + timing - carrying;  going price at acquisition not known:  not split - carrying
 *     left otherwise: what came in - paid, under the name of how it left, - carrying
 * The parts add up to the saving exactly. Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function savingCauses(row: SavingRow): Part[] {
  const { saving, discount, timing, carrying, kind } = row;
  if (saving === null) return [];
  const nothing = money(0, saving.currency);
  const held: Part[] = carrying === null ? [] : [{ cause: "carrying", amount: subtract(nothing, carrying) }];
  if (kind !== "drawn" && kind !== "held")
    return [{ cause: kind, amount: beforeCarrying(saving, carrying) }, ...held];
  if (discount === null || timing === null)
    return [{ cause: "not-split", amount: beforeCarrying(saving, carrying) }, ...held];
  return [{ cause: DISCOUNTS[row.source], amount: discount }, { cause: "timing", amount: timing }, ...held];
}

/**
 * A saving by what made it: lines in the order of SAVING_CAUSES, only those some row has a part in. Their amounts add up
 * to the realised and the unrealised saving of the same rows exactly, whatever rows were chosen.
 * Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function savingBreakdown(rows: readonly SavingRow[], currency: CurrencyCode): SavingBreakdownLine[] {
  const parts = rows.flatMap((row) =>
    savingCauses(row).map((part) => ({ ...part, isHeld: row.kind === "held" })),
  );
  return SAVING_CAUSES.flatMap((cause) => {
    const own = parts.filter((part) => part.cause === cause);
    if (own.length === 0) return [];
    const of = (isHeld: boolean) =>
      sum(
        own.filter((part) => part.isHeld === isHeld).map((part) => part.amount),
        currency,
      );
    const [realised, unrealised] = [of(false), of(true)];
    return [{ cause, realised, unrealised, amount: add(realised, unrealised), rows: own.length }];
  });
}
