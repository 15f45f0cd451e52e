import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Cover, Offer } from "./offer.ts";

/** step: least quantity of the purchase unit that can be bought. used: so many of the quantity may be used ones. */
export type CoverTerms = Readonly<{ step: Decimal; used: Decimal; currency: CurrencyCode }>;

export function cheapestCover(_offers: readonly Offer[], _quantity: Decimal, _terms: CoverTerms): Cover {
  throw new Error("not built yet");
}
