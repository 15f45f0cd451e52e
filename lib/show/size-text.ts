import { type Decimal, decimal } from "../decimal.ts";
import type { Quantity } from "../measure/units.ts";
import { quantityText } from "./money-text.ts";

const FINEST = 64;

/** Inches as on a tape: "92 5/8", "5/8", "48"; null for what is no sixty-fourth. */
function tapeInches(value: Decimal): string | null {
  const whole = value.floor();
  const parts = value.minus(whole).times(FINEST);
  if (!parts.isInteger()) return null;
  if (parts.isZero()) return whole.toFixed();
  let [over, under] = [parts.toNumber(), FINEST];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return whole.isZero() ? `${over}/${under}` : `${whole.toFixed()} ${over}/${under}`;
}

/** A size for a field to begin with: inches as on a tape, anything else in decimals. Read back unchanged. Rounds: never. */
export function sizeTyped({ value, unit }: Quantity): string {
  return (unit === "inch" ? tapeInches(value) : null) ?? value.toFixed();
}

/** A size for reading. Rounds: to three places where it is no fraction of an inch. */
export function sizeText({ value, unit }: Quantity, locale: string): string {
  const tape = unit === "inch" && value.lessThan(decimal(1000)) ? tapeInches(value) : null;
  return tape ?? quantityText(value, locale);
}
