import { fields, quantity } from "../entry-fields.ts";

/** "Buy so many, get so many free" as typed beside a price: both or neither, each above zero. Purchase units. */
export const freeEntry = fields({ paidFor: quantity(), freeWith: quantity() });
