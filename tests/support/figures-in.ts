import { type Decimal, decimal, roundHalfUp } from "../../lib/decimal.ts";

function isDecimal(value: object): value is Decimal {
  return value instanceof decimal(0).constructor;
}

function amountsOf(value: unknown): Decimal[] {
  if (typeof value !== "object" || value === null) return [];
  if (isDecimal(value)) return [value];
  const parts: readonly unknown[] =
    value instanceof Map || Array.isArray(value) ? [...value.values()] : Object.values(value);
  return parts.flatMap(amountsOf);
}

/** Every exact figure anywhere inside an answer, to the cent, so that a test can say which figure is nowhere in it. */
export function figuresIn(answer: unknown): readonly string[] {
  return [...new Set(amountsOf(answer).map((value) => roundHalfUp(value, 2).toFixed(2)))];
}
