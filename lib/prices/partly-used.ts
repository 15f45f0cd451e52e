import {
  type Choice,
  type Chosen,
  greatestDivisor,
  leastWeight,
  lesser,
  relaxedWeight,
} from "./least-weight.ts";

function sum(values: readonly bigint[]): bigint {
  return values.reduce((total, value) => total + value, 0n);
}

/**
 * `leastWeight` when only `allowed` of the need may come from the second group of choices (used terms); exact.
 *     least over u of  least(second group covers u) + least(first group covers need - u),  0 <= u <= allowed
 * The relaxed sum is convex in u, so every u that can still win lies in one stretch around its lowest point.
 * Answers amounts of the first group, then of the second. null: they cannot reach the need.
 */
export function leastWeightPartly(
  first: readonly Choice[],
  second: readonly Choice[],
  need: bigint,
  allowed: bigint,
): Chosen | null {
  const unit = second.reduce((divisor, { pack }) => greatestDivisor(divisor, pack), 0n);
  if (unit === 0n) return leastWeight(first, need);
  const short = need - sum(first.map(({ max }) => max));
  const reach = sum(second.map(({ max }) => max));
  const low = short > 0n ? (short + unit - 1n) / unit : 0n;
  const most = lesser(lesser(allowed, reach), need);
  const high = most / unit;
  // What may be used need not be a whole number of packs: using all of it is tried by itself.
  let best = together(first, second, need, most);
  if (low > high) return best;
  const relaxed = (steps: bigint): bigint =>
    (relaxedWeight(first, need - steps * unit) ?? 0n) + (relaxedWeight(second, steps * unit) ?? 0n);

  let from = low;
  let to = high;
  while (from < to) {
    const middle = (from + to) / 2n;
    if (relaxed(middle) <= relaxed(middle + 1n)) to = middle;
    else from = middle + 1n;
  }
  const attempt = (steps: bigint): boolean => {
    if (best !== null && relaxed(steps) >= best.weight) return false;
    const found = together(first, second, need, steps * unit);
    if (found !== null && (best === null || found.weight < best.weight)) best = found;
    return true;
  };
  for (let steps = from; steps <= high && attempt(steps); steps += 1n);
  for (let steps = from - 1n; steps >= low && attempt(steps); steps -= 1n);
  return best;
}

function together(
  first: readonly Choice[],
  second: readonly Choice[],
  need: bigint,
  used: bigint,
): Chosen | null {
  const a = leastWeight(first, need - used);
  const b = leastWeight(second, used);
  if (a === null || b === null) return null;
  return { amounts: [...a.amounts, ...b.amounts], weight: a.weight + b.weight };
}
