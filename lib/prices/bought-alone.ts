import type { Decimal } from "../decimal.ts";
import type { Money } from "../money/money.ts";
import type { CoverTerms } from "./cheapest-cover.ts";
import type { Cover, Offer } from "./offer.ts";
import type { StoreCharge } from "./order-charges.ts";

/** The cheapest way to buy one material by itself, delivery and other order charges counted. total = cover.cost + charges. */
export type BoughtAlone = Readonly<{ cover: Cover; charges: readonly StoreCharge[]; total: Money }>;

export function boughtAlone(_offers: readonly Offer[], _quantity: Decimal, _terms: CoverTerms): BoughtAlone {
  throw new Error("not built yet");
}
