import { type Decimal, decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money, roundToMinorUnit, sum, times } from "../money/money.ts";
import { leastWeight, lesser } from "./least-weight.ts";
import type { Cover, Offer, Take } from "./offer.ts";
import { type OfferChoice, offerChoices, quantitiesOf, scaleOf, whole } from "./offer-choices.ts";
import { leastWeightPartly } from "./partly-used.ts";
import { plainlyBest } from "./plain-cover.ts";

/** step: smallest quantity of the purchase unit that can be bought. used: so much of the quantity may be used ones. */
export type CoverTerms = Readonly<{ step: Decimal; used: Decimal; currency: CurrencyCode }>;

/** What a group of offers gives: amounts by offer, how much of the need it covers, and of that from used ones. */
type Part = Readonly<{ takes: readonly (readonly [Offer, bigint])[]; covered: bigint; used: bigint }>;

function most(choices: readonly OfferChoice[]): bigint {
  return choices.reduce((total, { choice }) => total + choice.max, 0n);
}

/** The cheapest way offers cover as much of a need as they can. */
function partOf(offers: readonly Offer[], need: bigint, allowed: bigint, scale: Decimal): Part {
  const all = offerChoices(offers, need, scale).filter(({ offer }) => allowed > 0n || offer.terms !== "used");
  const isUsed = ({ offer }: OfferChoice) => offer.terms === "used";
  const mixed = allowed < need && all.some(isUsed);
  const plain = mixed ? all.filter((one) => !isUsed(one)) : all;
  const used = mixed ? all.filter(isUsed) : [];
  const plainMost = most(plain);
  const usedMost = lesser(most(used), allowed);
  const covered = lesser(need, plainMost + usedMost);
  const first = plain.map(({ choice }) => choice);
  const second = used.map(({ choice }) => choice);
  const found = mixed ? leastWeightPartly(first, second, covered, usedMost) : leastWeight(first, covered);
  const amounts = found?.amounts ?? [];
  const takes = [...plain, ...used].flatMap(({ offer }, index) => {
    const amount = amounts[index] ?? 0n;
    return amount > 0n ? [[offer, amount] as const] : [];
  });
  const usedTaken = takes.reduce(
    (total, [{ terms }, amount]) => (terms === "used" ? total + amount : total),
    0n,
  );
  return { takes, covered, used: lesser(usedTaken, allowed) };
}

/**
 * The cheapest way to cover a quantity by offers combined: the exact least total, each offer for nothing or for between
 * its minimum and maximum in whole packs, more than needed where that is cheaper or packs and minimums ask for it (R6).
 * Fresh offers first; stale ones only for what no fresh offer can cover. Used ones for at most `terms.used` of the
 * quantity. Foreign offers before import charges never. Ties: the smaller quantity, the fresher, the nearer store.
 *     cost = sum of price x quantity over the takes;  over = taken - covered;  uncovered = quantity - covered
 * Units: purchase units; home currency. Rounds: cost and restsOnStale once each, half up; takes stay unrounded. Without
 * order charges: see `orderCharges` and `boughtAlone`. @throws {CurrencyMismatch} when an offer is not in that currency.
 */
export function cheapestCover(offers: readonly Offer[], quantity: Decimal, terms: CoverTerms): Cover {
  const zero = money(ZERO, terms.currency);
  if (!quantity.isPositive() || quantity.isZero())
    return { quantity, takes: [], cost: zero, over: ZERO, uncovered: ZERO, restsOnStale: zero };
  const usable = offers.filter((offer) => !offer.beforeImportCharges);
  const plain = plainlyBest(usable, quantity, terms.used);
  if (plain !== null) {
    const take = { offer: plain, quantity, cost: times(plain.price, quantity) };
    return {
      quantity,
      takes: [take],
      cost: roundToMinorUnit(take.cost),
      over: ZERO,
      uncovered: ZERO,
      restsOnStale: zero,
    };
  }
  const scale = scaleOf([quantity, terms.used, ...usable.flatMap(quantitiesOf)]);
  const need = whole(quantity, scale);
  const allowed = lesser(whole(terms.used, scale), need);

  const fresh = partOf(
    usable.filter((offer) => !offer.stale),
    need,
    allowed,
    scale,
  );
  const left = need - fresh.covered;
  const stale =
    left > 0n
      ? partOf(
          usable.filter((offer) => offer.stale),
          left,
          allowed - fresh.used,
          scale,
        )
      : null;

  const inUnits = (amount: bigint): Decimal => decimal(amount.toString()).dividedBy(scale);
  const taken = [...fresh.takes, ...(stale?.takes ?? [])];
  const takes: Take[] = taken.map(([offer, amount]) => ({
    offer,
    quantity: inUnits(amount),
    cost: times(offer.price, inUnits(amount)),
  }));
  const covered = fresh.covered + (stale?.covered ?? 0n);
  const cost = (some: readonly Take[]) =>
    roundToMinorUnit(
      sum(
        some.map((take) => take.cost),
        terms.currency,
      ),
    );
  return {
    quantity,
    takes,
    cost: cost(takes),
    over: inUnits(taken.reduce((total, [, amount]) => total + amount, -covered)),
    uncovered: inUnits(need - covered),
    restsOnStale: cost(takes.filter(({ offer }) => offer.stale)),
  };
}
