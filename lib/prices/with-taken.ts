import type { Decimal } from "../decimal.ts";
import type { Offer } from "./offer.ts";

export function withTaken(_offers: readonly Offer[], _taken: ReadonlyMap<string, Decimal>): Offer[] {
  throw new Error("not built yet");
}
