import { Decimal } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Terms } from "../prices/observation.ts";
import type { Offer } from "../prices/offer.ts";
import type { Valuation } from "../prices/valuation.ts";
import { dayText } from "./day-text.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";

/** A quantity for reading, and as canonical decimal text to choose the form of a word by. */
export type QuantityText = Readonly<{ text: string; exact: string }>;

/** An offer in force, as text. minimum, packSize null: any quantity; lapses null: until a newer price is seen. */
export type OfferRow = Readonly<{
  id: string;
  storeName: string;
  terms: Terms;
  price: string;
  beforeTax: string;
  ageDays: number;
  stale: boolean;
  staleRate: boolean;
  beforeImportCharges: boolean;
  unit: PurchaseUnit;
  minimum: QuantityText | null;
  maximum: QuantityText | null;
  packSize: QuantityText | null;
  lapses: string | null;
  charges: readonly Readonly<{ name: string; amount: string; freeFrom: string | null }>[];
}>;

/** An offer for reading. Rounds: for reading only. */
export function offerRow(offer: Offer, valuation: Valuation, locale: string): OfferRow {
  const step = purchaseStep(offer.unit);
  const quantity = (value: Decimal): QuantityText => ({
    text: quantityText(value, locale),
    exact: value.toFixed(),
  });
  return {
    id: offer.observationId,
    storeName: valuation.stores.get(offer.storeId)?.name ?? "–",
    terms: offer.terms,
    price: unitPriceText(offer.price, locale),
    beforeTax: unitPriceText(offer.beforeTax, locale),
    ageDays: offer.ageDays,
    stale: offer.stale,
    staleRate: offer.staleRate,
    beforeImportCharges: offer.beforeImportCharges,
    unit: offer.unit,
    minimum: offer.minQuantity.greaterThan(step) ? quantity(offer.minQuantity) : null,
    maximum: offer.maxQuantity === null ? null : quantity(offer.maxQuantity),
    packSize: offer.packSize.equals(step) ? null : quantity(offer.packSize),
    lapses: offer.lapsesOn === null ? null : dayText(offer.lapsesOn, locale),
    charges: offer.orderCharges.map(({ name, amount, freeFrom }) => ({
      name,
      amount: moneyText(amount, locale),
      freeFrom: freeFrom === null ? null : moneyText(freeFrom, locale),
    })),
  };
}

/** New ones whose import charges are known. */
function ofNew(offers: readonly Offer[]): Offer[] {
  return offers.filter(({ terms, beforeImportCharges }) => terms !== "used" && !beforeImportCharges);
}

/**
 * The offer a buyer of one purchase unit of new material would take: the cheapest fresh one that needs no larger quantity and
 * whose import charges are known; a stale one only where no fresh one is. null: none. offers: cheapest first.
 */
export function bestForOne(offers: readonly Offer[]): Offer | null {
  const open = ofNew(offers).filter(({ minQuantity, unit }) =>
    minQuantity.lessThanOrEqualTo(purchaseStep(unit)),
  );
  return open.find(({ stale }) => !stale) ?? open[0] ?? null;
}

/** Where none is for one (full packs, a price for many): the same among the offers of the smallest quantity there is. */
export function bestForFewest(offers: readonly Offer[]): Offer | null {
  const open = ofNew(offers);
  const [first] = open;
  if (first === undefined) return null;
  const fewest = open.reduce((least, { minQuantity }) => Decimal.min(least, minQuantity), first.minQuantity);
  const few = open.filter(({ minQuantity }) => minQuantity.equals(fewest));
  return few.find(({ stale }) => !stale) ?? few[0] ?? null;
}
