import type { Decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import type { GoingPrice } from "../prices/offer.ts";
import { disposalFee } from "../projects/disposal-cost.ts";
import { weightOfOne } from "../stock/load-weight.ts";
import { type Choice, type ChoiceLineKey, salvageChoice } from "../stock/salvage-choice.ts";
import type { SalvageChoiceEntry } from "../stock/salvage-choice-entry.ts";
import { figureText, moneyText } from "./money-text.ts";

/** One way to go, for reading: its lines and what they come to; null: not known. */
export type WayText = Readonly<{
  choice: Choice;
  lines: readonly Readonly<{ key: ChoiceLineKey; amount: string | null }>[];
  total: string | null;
}>;

/** The comparison for reading. tie: both come to the same. weight: what it was taken to weigh, kilograms. */
export type ChoiceText = Readonly<{
  ways: readonly WayText[];
  better: Readonly<{ choice: Choice; over: Choice; by: string; tie: boolean }> | null;
  weight: string | null;
}>;

function kilogramsOf({ weight, quantity }: SalvageChoiceEntry, material: Material): Decimal | null {
  return weight ?? weightOfOne(material)?.times(quantity) ?? null;
}

/**
 * What was asked about so much of a material, weighed up at its going price. The disposal fee is that of what it weighs: as
 * said, else quantity x weight of one. Units: home currency. Rounds: as `salvageChoice`.
 */
export function choiceText(
  asked: SalvageChoiceEntry,
  material: Material,
  going: GoingPrice,
  currency: CurrencyCode,
  locale: string,
): ChoiceText {
  const kilograms = kilogramsOf(asked, material);
  const fee =
    asked.fee === null
      ? null
      : disposalFee(
          { feeBasis: asked.feeBasis, fee: asked.fee, least: asked.least, loads: asked.loads },
          kilograms,
        );
  const { ways, better } = salvageChoice({
    ...asked,
    going: going.known ? going.price : null,
    disposal: fee === null ? null : money(fee, currency),
    currency,
  });
  const text = (amount: Parameters<typeof moneyText>[0] | null) =>
    amount === null ? null : moneyText(amount, locale, { signed: true });
  return {
    ways: ways.map(({ choice, lines, total }) => ({
      choice,
      lines: lines.map(({ key, amount }) => ({ key, amount: text(amount) })),
      total: text(total),
    })),
    better: better && {
      choice: better.choice,
      over: better.over,
      by: moneyText(better.by, locale),
      tie: better.by.amount.isZero(),
    },
    weight: kilograms === null ? null : figureText(kilograms, locale, 0, 0),
  };
}
