import type { CurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { Take } from "./offer.ts";

/** One charge of one store's order, home currency, all in, rounded to the minor unit. */
export type StoreCharge = Readonly<{ storeId: string; name: string; amount: Money }>;

export function orderCharges(_takes: readonly Take[], _currency: CurrencyCode): StoreCharge[] {
  throw new Error("not built yet");
}
