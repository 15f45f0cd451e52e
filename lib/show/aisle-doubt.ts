import { decimal } from "../decimal.ts";
import type { LoggedPrice } from "./logged-price.ts";

/** How far a price may be from what is known before it looks like a slip of the decimal point: judgement, not fact. */
const FAR = 5;

/**
 * Whether a typed price looks ten times too large or too small: "tenth", a tenth of it would be near what is known, or
 * "tenfold". Known: the going price, else the best elsewhere, else what was last paid. null: it may well be right, or nothing
 * is known. Units: none, both all in per purchase unit. Rounds: never.
 */
export function tenfoldOff({ means, elsewhere, paid }: LoggedPrice): "tenth" | "tenfold" | null {
  const known = means.going.known ? means.going.price : (elsewhere?.price ?? paid?.each ?? null);
  if (!means.price.known || known === null || known.amount.isZero()) return null;
  const ratio = means.price.price.amount.dividedBy(known.amount);
  const near = (value: typeof ratio) =>
    value.greaterThanOrEqualTo(decimal(FAR).dividedBy(10)) &&
    value.lessThanOrEqualTo(decimal(10).dividedBy(FAR));
  if (near(ratio)) return null;
  if (near(ratio.dividedBy(10))) return "tenth";
  return near(ratio.times(10)) ? "tenfold" : null;
}
