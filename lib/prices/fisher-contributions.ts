import { type Decimal, decimal, HUNDRED, ONE, roundHalfUp, ZERO } from "../decimal.ts";
import type { IndexPoints } from "./index-levels.ts";
import { fisherIndex, type TwoBasketsLine } from "./index-numbers.ts";

/** Nearer to each other than this, two values' logarithmic mean is their middle to all the digits there are. */
const NEARLY_ONE = decimal("1e-15");
const TWO = decimal(2);

/** Logarithmic mean (a - b) / ln(a / b); of two equal values that value, of anything and nothing nothing. */
function logarithmicMean(a: Decimal, b: Decimal): Decimal {
  if (a.isZero() || b.isZero()) return ZERO;
  const ratio = a.dividedBy(b);
  return ratio.minus(ONE).abs().lessThan(NEARLY_ONE)
    ? a.plus(b).dividedBy(TWO)
    : a.minus(b).dividedBy(ratio.ln());
}

function shares(values: readonly Decimal[]): Decimal[] {
  const total = values.reduce((sum, value) => sum.plus(value), ZERO);
  return values.map((value) => value.dividedBy(total));
}

/** Weights of the logarithms of the price ratios that make the index of one fixed basket: sum w ln r = ln index. */
function weightsOf(
  lines: readonly TwoBasketsLine[],
  quantity: (line: TwoBasketsLine) => Decimal,
): readonly Decimal[] {
  const before = shares(lines.map((line) => quantity(line).times(line.basePrice)));
  const after = shares(lines.map((line) => quantity(line).times(line.price)));
  return shares(lines.map((_, at) => logarithmicMean(before[at] ?? ZERO, after[at] ?? ZERO)));
}

/**
 * What each line moves the Fisher index by, in index points, in the order of the lines.
 *     w = mean of the line's logarithmic weights in Laspeyres and in Paasche (shares before and after, logarithmic mean)
 *     contribution = 100 x v (r - 1), r = p / p0, v = w / L(r, Fisher) over the sum of these, L the logarithmic mean
 * Rounds: each to `places`, half up, such that they sum to the rounded change exactly, as `contributions` does.
 * null: no Fisher index is known. Errors: as `loweIndex`. One basket at both sides: the contributions of Lowe. Source:
 * additive decomposition by logarithmic means; it gives the table of Balk, Price and Quantity Index Numbers (2008), to
 * every digit printed.
 */
export function fisherContributions(lines: readonly TwoBasketsLine[], places = 20): IndexPoints[] | null {
  const fisher = fisherIndex(lines)?.level.dividedBy(HUNDRED) ?? null;
  if (fisher === null) return null;
  const laspeyres = weightsOf(lines, ({ baseQuantity }) => baseQuantity);
  const paasche = weightsOf(lines, ({ quantity }) => quantity);
  const ratios = lines.map(({ price, basePrice }) => price.dividedBy(basePrice));
  const parts = shares(
    ratios.map((ratio, at) => {
      const weight = (laspeyres[at] ?? ZERO).plus(paasche[at] ?? ZERO);
      return weight.dividedBy(logarithmicMean(ratio, fisher));
    }),
  );
  let exact = ZERO;
  let before = ZERO;
  return ratios.map((ratio, at) => {
    exact = exact.plus((parts[at] ?? ZERO).times(ratio.minus(ONE)).times(HUNDRED));
    const upTo = roundHalfUp(exact, places);
    const points = upTo.minus(before);
    before = upTo;
    return { points };
  });
}
