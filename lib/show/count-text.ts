import type { Decimal } from "../decimal.ts";
import { quantityText } from "./money-text.ts";

/** A quantity for reading, and as canonical decimal text, to choose the form of a word by. */
export type CountText = Readonly<{ text: string; exact: string }>;

/** A quantity as text; null for nothing. Rounds: half up to 0.001, for reading. */
export function someText(value: Decimal, locale: string): CountText | null {
  return value.isZero() ? null : { text: quantityText(value, locale), exact: value.toFixed() };
}

/** A quantity as text, nothing too. Rounds: half up to 0.001, for reading. */
export function countText(value: Decimal, locale: string): CountText {
  return { text: quantityText(value, locale), exact: value.toFixed() };
}
