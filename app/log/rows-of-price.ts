import type { PlainSeen } from "../../lib/show/aisle-seen.ts";
import type { Row } from "../_offline/log-database.ts";
import type { PriceEntrySent } from "./check-price.ts";

type Given = Readonly<{
  newId: () => string;
  at: number;
  workspaceId: string;
  restsOn: readonly string[];
  named?: string;
}>;

/** A price as a row of the outbox; its id is made here, once, when the button is pressed. */
export function rowOfPrice(entry: PriceEntrySent, { newId, at, workspaceId, restsOn, named }: Given): Row {
  return { id: newId(), workspaceId, kind: "price", said: { entry }, at, state: "queued", restsOn, named };
}

/** The last shelf price, seen again today: it still stands beside the special. */
export function stillSo(shelf: PlainSeen, entry: PriceEntrySent): PriceEntrySent {
  const { materialId, storeId, seenOn } = entry;
  return {
    materialId,
    storeId,
    seenOn,
    note: undefined,
    terms: "shelf",
    amount: shelf.amount ?? "0",
    currency: shelf.currency ?? "CAD",
    per: { quantity: shelf.per ?? "1", unit: shelf.unit },
    taxIncluded: shelf.taxIncluded ?? false,
    from: undefined,
    until: undefined,
    minQuantity: shelf.min,
    maxQuantity: shelf.max,
    packSize: shelf.pack,
    fees: [],
  };
}
