/** Something bought in whole packs for nothing or for between min and max; weight per unit. All whole numbers; max is at least min, both in whole packs. */
export type Choice = Readonly<{ weight: bigint; pack: bigint; min: bigint; max: bigint }>;

/** An amount of each choice, in the order of the choices, and their total weight. */
export type Chosen = Readonly<{ amounts: readonly bigint[]; weight: bigint }>;

type State = Readonly<{ left: bigint; weight: bigint; amount: bigint; before: State | null }>;

/** The lesser of two. */
export function lesser(a: bigint, b: bigint): bigint {
  return a < b ? a : b;
}

function greater(a: bigint, b: bigint): bigint {
  return a > b ? a : b;
}

/** The next whole number of packs. */
export function upTo(value: bigint, pack: bigint): bigint {
  const packs = value / pack;
  return packs * pack === value ? value : (packs + 1n) * pack;
}

/** The greatest common divisor of two whole numbers, by Euclid's algorithm; of 0 and b: b. */
export function greatestDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

function commonMultiple(a: bigint, b: bigint): bigint {
  return (a / greatestDivisor(a, b)) * b;
}

/**
 * A weight no cover of `need` by the choices (lightest first, from `first` on) can go under: minimums and packs are not
 * looked at. null: they cannot cover it.
 */
export function relaxedWeight(choices: readonly Choice[], need: bigint, first = 0): bigint | null {
  let left = need;
  let total = 0n;
  for (let at = first; at < choices.length && left > 0n; at += 1) {
    const choice = choices[at];
    if (choice === undefined) break;
    const some = lesser(choice.max, left);
    total += some * choice.weight;
    left -= some;
  }
  return left > 0n ? null : total;
}

/** The least amount of a choice that covers what is left; null: it cannot. */
function closing(choice: Choice, left: bigint): bigint | null {
  if (left <= 0n) return 0n;
  const amount = upTo(greater(left, choice.min), choice.pack);
  return amount > choice.max ? null : amount;
}

/**
 * Amounts worth trying of a choice beside the one that closes the cover. Two choices with room can shift a common
 * multiple of their packs from the heavier to the lighter without loss; so a lighter one than the closing one is at
 * nothing or near its maximum, a heavier one at nothing or near its minimum.
 */
function amountsBeside(choice: Choice, reach: bigint, lighter: boolean): bigint[] {
  const amounts = [0n];
  if (lighter) {
    const above = choice.max - reach;
    for (let some = choice.max; some > above && some >= choice.min; some -= choice.pack) amounts.push(some);
  } else {
    const under = choice.min + reach;
    for (let some = choice.min; some < under && some <= choice.max; some += choice.pack) amounts.push(some);
  }
  return amounts;
}

/** States nobody beats: less left to cover always weighs more. */
function unbeaten(states: State[]): State[] {
  states.sort((a, b) => (a.weight < b.weight ? -1 : a.weight > b.weight ? 1 : a.left < b.left ? -1 : 1));
  const kept: State[] = [];
  for (const state of states) {
    const last = kept[kept.length - 1];
    if (last === undefined || state.left < last.left) kept.push(state);
  }
  return kept;
}

function amountsOf(state: State, order: readonly number[], closingAt: number, closed: bigint): bigint[] {
  const amounts: bigint[] = [];
  amounts[closingAt] = closed;
  let at: State | null = state;
  for (let layer = order.length - 1; layer >= 0 && at !== null; layer -= 1) {
    amounts[order[layer] ?? 0] = at.amount;
    at = at.before;
  }
  return amounts;
}

/** The best cover closed by one choice that weighs less than `best`; else `best` itself. */
function closedBy(
  choices: readonly Choice[],
  closingAt: number,
  need: bigint,
  best: Chosen | null,
): Chosen | null {
  const close = choices[closingAt];
  if (close === undefined) return best;
  const order = choices.map((_, index) => index).filter((index) => index !== closingAt);
  let found = best;
  let states: State[] = [{ left: need, weight: 0n, amount: 0n, before: null }];
  for (const [layer, index] of order.entries()) {
    const choice = choices[index];
    if (choice === undefined) continue;
    const lighter = index < closingAt;
    const reaches = lighter
      ? choices.map((other) => commonMultiple(choice.pack, other.pack))
      : [commonMultiple(choice.pack, close.pack)];
    const reach = reaches.reduce(greater, choice.pack);
    const rest = choices.filter((_, other) => other === closingAt || order.indexOf(other) > layer);
    const next: State[] = [];
    for (const before of states) {
      for (const amount of before.left <= 0n ? [0n] : amountsBeside(choice, reach, lighter)) {
        const left = before.left - amount;
        const weight = before.weight + amount * choice.weight;
        const least = relaxedWeight(rest, left);
        if (least === null || (found !== null && weight + least >= found.weight)) continue;
        next.push({ left: left > 0n ? left : 0n, weight, amount, before });
      }
    }
    states = unbeaten(next);
  }
  for (const state of states) {
    const closed = closing(close, state.left);
    if (closed === null) continue;
    const weight = state.weight + closed * close.weight;
    if (found === null || weight < found.weight)
      found = { weight, amounts: amountsOf(state, order, closingAt, closed) };
  }
  return found;
}

/** A good cover found quickly, to measure the others by: each single choice, and the lightest first with each as the last. */
function quickCover(choices: readonly Choice[], need: bigint): Chosen | null {
  let best: Chosen | null = null;
  for (const [last, close] of choices.entries()) {
    for (const others of [[], choices.map((_, index) => index).filter((index) => index !== last)]) {
      const amounts = choices.map(() => 0n);
      let left = need;
      let weight = 0n;
      for (const index of others) {
        const choice = choices[index];
        if (choice === undefined || choice.weight > close.weight) continue;
        const most = lesser(choice.max, left);
        const some = most - (most % choice.pack);
        if (some < choice.min || some <= 0n) continue;
        amounts[index] = some;
        left -= some;
        weight += some * choice.weight;
      }
      const closed = closing(close, left);
      if (closed === null) continue;
      amounts[last] = closed;
      weight += closed * close.weight;
      if (best === null || weight < best.weight) best = { amounts, weight };
    }
  }
  return best;
}

/**
 * The least total weight of amounts, each nothing or between its minimum and maximum in whole packs, that together reach
 * `need`; exact. null: they cannot reach it. Choices come lightest first; of equal totals the first found stays.
 * Method: every best cover has a form in which one choice closes it and each other stands at nothing, near its maximum
 * (the lighter) or near its minimum (the heavier), see `amountsBeside`. Each choice is tried as the closing one; partial
 * covers that another beats, or whose relaxed rest cannot beat the best found, are dropped.
 */
export function leastWeight(choices: readonly Choice[], need: bigint): Chosen | null {
  if (need <= 0n) return { amounts: choices.map(() => 0n), weight: 0n };
  const usable = choices.map((choice) => {
    const enough = upTo(greater(need, choice.min), choice.pack);
    return enough < choice.max ? { ...choice, max: enough } : choice;
  });
  const least = relaxedWeight(usable, need);
  if (least === null) return null;
  let best = quickCover(usable, need);
  for (let closingAt = 0; closingAt < usable.length; closingAt += 1) {
    if (best !== null && best.weight === least) break;
    best = closedBy(usable, closingAt, need, best);
  }
  return best;
}
