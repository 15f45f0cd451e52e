import { type Decimal, decimal, ONE } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money, roundToMinorUnit, sum, times } from "../money/money.ts";
import { type CoverTerms, cheapestCover } from "../prices/cheapest-cover.ts";
import { greatestDivisor } from "../prices/least-weight.ts";
import type { Cover, Offer, Take } from "../prices/offer.ts";

/** Offers of one material; so much of it does the work of one purchase unit of the required one. */
export type StandIn = Readonly<{ offers: readonly Offer[]; factor: Decimal }>;

/** Numerator of a factor in lowest terms: 1.5 is 3/2, so 3. */
function numerator(factor: Decimal): bigint {
  const tens = decimal(10).pow(factor.decimalPlaces());
  const above = BigInt(factor.times(tens).toFixed(0));
  return above / greatestDivisor(above, BigInt(tens.toFixed(0)));
}

/** An offer with its quantities in parts, `per` of them to one of its units. */
function inParts(offer: Offer, per: Decimal): Offer {
  return {
    ...offer,
    price: money(offer.price.amount.dividedBy(per), offer.price.currency),
    minQuantity: offer.minQuantity.times(per),
    maxQuantity: offer.maxQuantity?.times(per) ?? null,
    packSize: offer.packSize.times(per),
  };
}

function costOf(takes: readonly Take[], currency: CurrencyCode) {
  return roundToMinorUnit(
    sum(
      takes.map((take) => take.cost),
      currency,
    ),
  );
}

/**
 * `cheapestCover` over the offers of a material and of its accepted alternatives together, in any mixture: exact.
 *     one required unit = L parts, one unit of an alternative = L / factor parts, L the least number that makes both whole
 * Units: quantity, over and uncovered in the required material's purchase units; takes in their own. An alternative is
 * bought in whole units and packs of its own; its offer costs price x factor per required unit.
 * Rounds: cost and restsOnStale once each, from the offers' own prices. Source: rules.md R6, R8.
 */
export function coverWithAlternatives(
  offers: readonly Offer[],
  alternatives: readonly StandIn[],
  quantity: Decimal,
  terms: CoverTerms,
): Cover {
  const others = alternatives.filter((other) => other.offers.length > 0);
  if (others.length === 0) return cheapestCover(offers, quantity, terms);
  const parts = others
    .map(({ factor }) => numerator(factor))
    .reduce((multiple, next) => (multiple / greatestDivisor(multiple, next)) * next, 1n);
  const perUnit = decimal(parts.toString());
  const original = new Map<Offer, Readonly<{ offer: Offer; per: Decimal }>>();
  for (const standIn of [{ offers, factor: ONE }, ...others]) {
    const per = perUnit.dividedBy(standIn.factor);
    for (const offer of standIn.offers) original.set(inParts(offer, per), { offer, per });
  }
  const cover = cheapestCover([...original.keys()], quantity.times(perUnit), {
    ...terms,
    step: terms.step.times(perUnit),
    used: terms.used.times(perUnit),
  });
  const takes = cover.takes.map((taken): Take => {
    const { offer, per } = original.get(taken.offer) ?? { offer: taken.offer, per: ONE };
    const amount = taken.quantity.dividedBy(per);
    return { offer, quantity: amount, cost: times(offer.price, amount) };
  });
  return {
    quantity,
    takes,
    cost: costOf(takes, terms.currency),
    over: cover.over.dividedBy(perUnit),
    uncovered: cover.uncovered.dividedBy(perUnit),
    restsOnStale: costOf(
      takes.filter(({ offer }) => offer.stale),
      terms.currency,
    ),
  };
}
