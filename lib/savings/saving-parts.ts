import { add, type Money, subtract } from "../money/money.ts";
import { stockSaving } from "../stock/held-saving.ts";
import type { SavingRow } from "./savings-figures.ts";

/** The rounded amounts of a row that all else is sums and differences of (R10). null: not known. */
export type RoundedAmounts = Readonly<{
  paid: Money | null;
  goingAtAcquisition: Money | null;
  goingAtDraw: Money | null;
  carrying: Money | null;
}>;

export type SavingParts = Pick<SavingRow, "discount" | "timing" | "saving">;

const NOT_KNOWN: SavingParts = { discount: null, timing: null, saving: null };

/**
 * The parts of a saving on what was drawn or is held:
 *     discount = going at acquisition - paid;  timing = going at draw - going at acquisition
 *     saving   = going at draw - paid - carrying = discount + timing - carrying
 * Going price at acquisition not known: the saving stands without a split. At draw, or the cost, not known: no saving,
 * never zero. No money rate: before carrying cost. Units: home currency. Rounds: never, so the parts add up exactly.
 * Source: rules.md R10.
 */
export function savingParts({
  paid,
  goingAtAcquisition,
  goingAtDraw,
  carrying,
}: RoundedAmounts): SavingParts {
  if (paid === null || goingAtDraw === null) return NOT_KNOWN;
  const saving = stockSaving(goingAtDraw, paid, carrying);
  if (goingAtAcquisition === null) return { ...NOT_KNOWN, saving };
  return {
    discount: subtract(goingAtAcquisition, paid),
    timing: subtract(goingAtDraw, goingAtAcquisition),
    saving,
  };
}

/**
 * What was made on goods that left otherwise: received (refund, proceeds, nothing for a loss) - paid - carrying.
 * null: cost or amount received not known. Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function disposalSaving(
  received: Money | null,
  paid: Money | null,
  carrying: Money | null,
): Money | null {
  return paid === null ? null : stockSaving(received, paid, carrying);
}

/** A saving before carrying: what it would be were money free. Rounds: never. */
export function beforeCarrying(saving: Money, carrying: Money | null): Money {
  return carrying === null ? saving : add(saving, carrying);
}
