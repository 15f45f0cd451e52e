import { type Decimal, roundUpToStep } from "../decimal.ts";

/** The most whole packs within a quantity. Units: as given. Rounds: down to a pack, once, free of division dust. */
export function wholePacks(quantity: Decimal, pack: Decimal): Decimal {
  const up = roundUpToStep(quantity, pack);
  return up.greaterThan(quantity) ? up.minus(pack) : up;
}
