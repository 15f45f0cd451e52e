import { decimal } from "../decimal.ts";
import { packOfFree } from "../prices/free-with-bought.ts";
import type { TypedTag } from "./aisle-price.ts";

/**
 * A tag as typed so far with its free ones in it, for reading while it is typed: "buy 2, get 1 free" at 10.00 is 20.00 for
 * 3. paid, free: canonical decimal text; without both above zero the tag stays as it is. Units, rounds: as `packOfFree`.
 */
export function tagWithFree(tag: TypedTag, paid: string | null, free: string | null): TypedTag {
  const bought = { paid: decimal(paid || "0"), free: decimal(free || "0") };
  if (!bought.paid.greaterThan(0) || !bought.free.greaterThan(0)) return tag;
  const pack = packOfFree({ amount: decimal(tag.amount), per: decimal(tag.perQuantity) }, bought);
  return { ...tag, amount: pack.amount.toFixed(), perQuantity: pack.per.toFixed() };
}
