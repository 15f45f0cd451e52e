import type { Money } from "../money/money.ts";
import type { WhySaving } from "../savings/why-saving.ts";
import { figureText, moneyText, quantityText } from "./money-text.ts";
import { percentOfShare } from "./share-typed.ts";

/** One line of the sum behind a saving; amount null: not known. part: of the line above it, not added once more. */
export type WhyStep = Readonly<{
  step:
    | "valueUse"
    | "valueBought"
    | "received"
    | "cost"
    | "carrying"
    | "storage"
    | "saving"
    | "discount"
    | "timing"
    | "strict";
  amount: string | null;
  values: Readonly<Record<string, string>>;
  part: boolean;
}>;

/** A unit price as it goes into a sum, with all that its rounding could hide. Rounds: to six places, for reading. */
function unitText(price: Money, locale: string): string {
  return figureText(price.amount, locale, 2, 6);
}

/**
 * A row's sum line by line, as it was reckoned: value, cost, carrying, storing, the saving, then what it is made of and the
 * strict figure. Rounds: amounts nothing further; unit prices and carrying before its rounding to six places, for reading.
 */
export function whySteps(why: WhySaving, locale: string): WhyStep[] {
  const { row, lot, cost, charged, carriedShare, storage, cover } = why;
  const isUsed = row.kind === "drawn" || row.kind === "held";
  const text = (value: Money | null, sign: "" | "-" = "") => {
    if (value === null) return null;
    const amount = sign === "-" ? value.amount.negated() : value.amount;
    return moneyText({ amount, currency: value.currency }, locale, { signed: true });
  };
  const condition = lot.condition.equals(1) ? "one" : percentOfShare(lot.condition, locale);
  const quantity = quantityText(row.quantity, locale);
  const value = (going: WhySaving["use"]): Record<string, string> => ({
    price: going?.going.known ? unitText(going.going.price, locale) : "–",
    day: going?.on ?? "",
    quantity,
    condition,
  });
  const whole = (why.carried ?? []).reduce<Money | null>(
    (all, { carrying }) =>
      all === null ? carrying : { amount: all.amount.plus(carrying.amount), currency: carrying.currency },
    null,
  );
  const step = (
    name: WhyStep["step"],
    amount: string | null,
    values: Record<string, string> = {},
    part = false,
  ): WhyStep => ({ step: name, amount, values, part });
  const shares = { charged: quantityText(charged, locale), quantity: quantityText(lot.quantity, locale) };
  return [
    ...(isUsed ? [step("valueUse", text(row.goingAtDraw), value(why.use))] : []),
    ...(isUsed || row.received === null ? [] : [step("received", text(row.received), { day: row.on ?? "" })]),
    step("cost", text(row.paid, "-"), {
      ...shares,
      cost: cost.known ? figureText(cost.cost.amount, locale, 2, 6) : "–",
    }),
    step("carrying", text(carriedShare, "-"), {
      ...shares,
      whole: whole === null ? "0" : figureText(whole.amount, locale, 2, 6),
    }),
    ...(storage === null || storage.amount.isZero() ? [] : [step("storage", text(storage, "-"))]),
    step("saving", text(row.saving)),
    ...(isUsed
      ? [
          step("valueBought", text(row.goingAtAcquisition), value(why.acquisition), true),
          step("discount", text(row.discount), {}, true),
          step("timing", text(row.timing), {}, true),
          step(
            "strict",
            text(row.strictSaving),
            {
              cost: cover === null ? "–" : moneyText(cover.cost, locale),
              need: cover === null ? "–" : quantityText(cover.quantity, locale),
              quantity,
              condition,
            },
            true,
          ),
        ]
      : []),
  ];
}
