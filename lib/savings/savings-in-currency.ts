import type { CurrencyCode } from "../money/currencies.ts";
import { add, type Money, roundToMinorUnit, subtract } from "../money/money.ts";
import type { KnownRate } from "../rates/exchange-rate.ts";
import { inCurrency } from "../rates/rate-of-day.ts";
import { disposalSaving, savingParts } from "./saving-parts.ts";
import type { SavingRow } from "./savings-figures.ts";

type Rate = Pick<KnownRate, "multiplyBy" | "divideBy">;

/**
 * Rows for reading in another currency, all at one rate, that of the report's day, which the report names: a saving is a
 * difference of money of several days, so a rate of each row's own day would make a gain or a loss of the rate's moves. The amounts that
 * are rounded per row (both values, cost, carrying, what came in, the best value) are converted and rounded once each;
 * all else is sums and differences of them again, so parts still add up to the cent.
 * Units: the asked currency. Rounds: those amounts, half up. Source: rules.md R2, R10.
 */
export function savingsInCurrency(
  rows: readonly SavingRow[],
  to: CurrencyCode,
  rate: Rate,
): readonly SavingRow[] {
  const converted = (value: Money | null) =>
    value === null ? null : roundToMinorUnit(inCurrency(value, to, rate));
  return rows.map((row): SavingRow => {
    const amounts = {
      paid: converted(row.paid),
      goingAtAcquisition: converted(row.goingAtAcquisition),
      goingAtDraw: converted(row.goingAtDraw),
      carrying: converted(row.carrying),
    };
    const received = converted(row.received);
    if (row.kind !== "drawn" && row.kind !== "held") {
      const nothing = amounts.paid === null ? null : subtract(amounts.paid, amounts.paid);
      const saving =
        row.saving === null ? null : disposalSaving(received ?? nothing, amounts.paid, amounts.carrying);
      return { ...row, ...amounts, received, saving, strictSaving: saving };
    }
    const { paid, carrying, strictSaving } = row;
    const before = strictSaving === null || paid === null ? null : add(strictSaving, paid);
    const best = converted(before === null || carrying === null ? before : add(before, carrying));
    const against = best === null || amounts.paid === null ? null : subtract(best, amounts.paid);
    const strict =
      against === null || amounts.carrying === null ? against : subtract(against, amounts.carrying);
    return { ...row, ...amounts, ...savingParts(amounts), received, strictSaving: strict };
  });
}
