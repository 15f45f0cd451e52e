import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { Money } from "../money/money.ts";
import { valuedAsSeen } from "./all-in-price.ts";
import { tierOf } from "./in-force.ts";
import type { Observation, Terms } from "./observation.ts";
import { bySighting, seenDay } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";

/** price: as seen, home currency, all in, per purchase unit, unrounded. percent: from `before`, the sighting before it at that store of the same terms and minimum; null for a first one. */
export type LastChange = Readonly<{
  observationId: string;
  storeId: string;
  seenOn: LocalDate;
  terms: Terms;
  price: Money;
  before: Money | null;
  percent: Decimal | null;
}>;

/**
 * The last price of a material seen by a day and how it changed since the same store was seen before, like with like.
 *     percent = (price - before) / before x 100, from the earlier value
 * Each is valued on its own day (R2). The newest shelf price; where there is none, the newest other price that is no
 * receipt and not used. Rounds: never. null: none that can be valued.
 */
export function lastChange(
  day: LocalDate,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
): LastChange | null {
  const step = purchaseStep(material.purchaseUnit);
  const seen = observations
    .filter((one) => one.materialId === material.id && one.amount !== null && seenDay(one, valuation) <= day)
    .filter(({ terms }) => terms !== "paid" && terms !== "used")
    .sort(bySighting)
    .reverse();
  const shelf = seen.filter(({ terms }) => terms === "shelf");
  for (const last of shelf.length > 0 ? shelf : seen) {
    const valued = valuedAsSeen(last, material, valuation);
    if (!valued.known) continue;
    const { id, storeId, seenOn, terms } = last;
    const earlier = seen
      .slice(seen.indexOf(last) + 1)
      .find((one) => one.storeId === storeId && one.terms === terms && sameTier(one, last, step));
    const was = earlier === undefined ? null : valuedAsSeen(earlier, material, valuation);
    const before = was?.known ? was.price : null;
    const percent =
      before === null || before.amount.isZero()
        ? null
        : valued.price.amount.minus(before.amount).dividedBy(before.amount).times(HUNDRED);
    return { observationId: id, storeId, seenOn, terms, price: valued.price, before, percent };
  }
  return null;
}

function sameTier(a: Observation, b: Observation, step: Decimal): boolean {
  return tierOf(a, step).equals(tierOf(b, step));
}
