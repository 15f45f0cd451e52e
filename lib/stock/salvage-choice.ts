import { type Decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money, roundToMinorUnit, subtract, times } from "../money/money.ts";

export const CHOICES = ["keep", "sell", "dump"] as const;
export type Choice = (typeof CHOICES)[number];

/** One line of a way to go: money in above zero, money out below; amount null: not known. */
export type ChoiceLine = Readonly<{ key: ChoiceLineKey; amount: Money | null }>;
export type ChoiceLineKey = "replacement" | "asked" | "labour" | "hauling" | "storage" | "disposal";

/** A way to go. total null: something of it is not known, and `unknown` names it. */
export type WayToGo = Readonly<{
  choice: Choice;
  lines: readonly ChoiceLine[];
  total: Money | null;
  unknown: readonly ChoiceLineKey[];
}>;

/**
 * What there is to weigh up about so much material; all money still to come, in home currency. going: of one new purchase
 * unit; asking: for one, null: nobody would ask for money; then there is no third way. storage: for the time it will lie.
 * disposal: what getting rid of it costs, null: not known; haulingAway: taking it there.
 */
export type SalvageQuestion = Readonly<{
  quantity: Decimal;
  condition: Decimal;
  going: Money | null;
  hours: Decimal;
  hourlyRate: Decimal;
  hauling: Decimal;
  storage: Decimal | null;
  disposal: Money | null;
  haulingAway: Decimal;
  asking: Decimal | null;
  currency: CurrencyCode;
}>;

/** better: the best of those that are known in all parts; over: the next one; null with fewer than two known. */
export type SalvageChoice = Readonly<{
  ways: readonly WayToGo[];
  better: Readonly<{ choice: Choice; over: Choice; by: Money }> | null;
}>;

function wayToGo(choice: Choice, lines: readonly ChoiceLine[], currency: CurrencyCode): WayToGo {
  const unknown = lines.filter(({ amount }) => amount === null).map(({ key }) => key);
  const total = lines.reduce((sum, { amount }) => sum.plus(amount?.amount ?? ZERO), ZERO);
  return { choice, lines, unknown, total: unknown.length > 0 ? null : money(total, currency) };
}

/**
 * Keeping, selling or dumping so much material, in money.
 *     keep = replacement value of new x condition - hours x rate - hauling - storage money
 *     sell = asking price x quantity - hours x rate
 *     dump = - disposal fee - hauling away
 * The better one is the largest of the totals that are known in all parts; a tie goes to keep, then sell. What has been
 * spent already is in none of them. Units: home currency. Rounds: each line, once, half up, to the minor unit; totals are
 * sums of lines. Not a promise: an asking price is not a sale. Source: the stock step's "keep or dump"; common practice.
 */
export function salvageChoice(asked: SalvageQuestion): SalvageChoice {
  const { quantity, condition, going, asking, storage, disposal, currency } = asked;
  const round = (amount: Decimal): Money => roundToMinorUnit(money(amount, currency));
  const out = (amount: Decimal): Money => round(amount.negated().plus(ZERO));
  const labour: ChoiceLine = { key: "labour", amount: out(asked.hours.times(asked.hourlyRate)) };
  const worth = going === null ? null : roundToMinorUnit(times(going, quantity.times(condition)));
  const keep: readonly ChoiceLine[] = [
    { key: "replacement", amount: worth },
    labour,
    { key: "hauling", amount: out(asked.hauling) },
    { key: "storage", amount: storage === null ? null : out(storage) },
  ];
  const dump: readonly ChoiceLine[] = [
    { key: "disposal", amount: disposal === null ? null : out(disposal.amount) },
    { key: "hauling", amount: out(asked.haulingAway) },
  ];
  const ways = [
    wayToGo("keep", keep, currency),
    ...(asking === null
      ? []
      : [wayToGo("sell", [{ key: "asked", amount: round(asking.times(quantity)) }, labour], currency)]),
    wayToGo("dump", dump, currency),
  ];
  const known = ways.flatMap(({ choice, total }) => (total === null ? [] : [{ choice, total }]));
  const [best, next] = known.sort((a, b) => b.total.amount.comparedTo(a.total.amount));
  if (best === undefined || next === undefined) return { ways, better: null };
  const by = subtract(best.total, next.total);
  return { ways, better: { choice: best.choice, over: next.choice, by } };
}
