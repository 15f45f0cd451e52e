import { type Decimal, decimal, HUNDRED } from "../decimal.ts";
import { percentText } from "./percent-text.ts";

/**
 * A percentage as canonical decimal text, as a share of one: "50" -> "0.5". What is no number stays as it is, so that the
 * entry names the fault. Units: percent in, share out. Rounds: never.
 */
export function shareOfPercent(text: string): string {
  return /^\d{1,9}(\.\d{1,9})?$/.test(text) ? decimal(text).dividedBy(HUNDRED).toFixed() : text;
}

/** A share of one as a percentage for reading: 0.5 -> "50%". Rounds: half up to three places. */
export function percentOfShare(share: Decimal, locale: string): string {
  return percentText(share.times(HUNDRED), locale);
}

/** A share of one as canonical decimal text in percent, to begin a field with: 0.5 -> "50". Rounds: never. */
export function percentTyped(share: Decimal): string {
  return share.times(HUNDRED).toFixed();
}
