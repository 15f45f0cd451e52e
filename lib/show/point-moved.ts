import { decimal } from "../decimal.ts";

/** The amount with its point moved: "299.80" is meant as "29.98". Decimal text. Rounds: never. */
export function withPointMoved(amount: string, off: "tenth" | "tenfold"): string {
  const moved = off === "tenth" ? decimal(amount).dividedBy(10) : decimal(amount).times(10);
  return moved.toFixed(Math.max(2, moved.decimalPlaces()));
}
