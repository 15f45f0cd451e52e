import type { Store } from "../prices/store.ts";
import { agreedOf } from "./agreed.ts";
import type { Lot, Paid } from "./lot.ts";
import type { LotEntry } from "./lot-entry.ts";

/**
 * An entry as the lot it is going to be, before it is stored: what it says of places and terms, as `agreedOf` has it for a
 * store. Rounds: never.
 */
export function lotToBe(
  entry: LotEntry,
  { id, paid, paidHome }: Readonly<{ id: string; paid: Paid; paidHome: Lot["paidHome"] }>,
  store: Store | null = null,
): Lot {
  const awaited = entry.receipts.length === 0;
  return {
    id,
    materialId: entry.materialId,
    origin: entry.origin,
    storeId: entry.storeId,
    terms: entry.terms,
    observationId: entry.observationId,
    quantity: entry.quantity,
    paid,
    paidHome,
    orderedOn: entry.orderedOn,
    receipts: entry.receipts,
    payments: entry.payments,
    condition: entry.condition,
    placeId: entry.placeId ?? null,
    storedAt: entry.storedAt,
    agreed: agreedOf(entry, { orderedOn: entry.orderedOn, awaited }, store),
    givenFree: entry.givenFree ?? null,
    otherCurrency: entry.otherCurrency ?? null,
    note: entry.note,
  };
}
