import { ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import type { OrderCharge, Take } from "./offer.ts";

/** One charge of one store's order, home currency, all in, rounded to the minor unit. */
export type StoreCharge = Readonly<{ storeId: string; name: string; amount: Money }>;

/** The dearer of two statements of one charge: nobody is promised the cheaper one. */
function dearer(a: OrderCharge | undefined, b: OrderCharge): OrderCharge {
  return a?.amount.amount.greaterThanOrEqualTo(b.amount.amount) ? a : b;
}

function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Charges per order of everything taken, one order per store, each name once however many lines carry it (R4). A charge
 * is waived when the order's amount before tax reaches its `freeFrom`, both to the cent; where lines state one charge differently the
 * dearer counts. Units: home currency. Rounds: each charge once, half up.
 * Order: by store, then name. @throws {CurrencyMismatch} never: offers are all in the home currency.
 */
export function orderCharges(takes: readonly Take[], currency: CurrencyCode): StoreCharge[] {
  const orders = new Map<string, { beforeTax: typeof ZERO; charges: Map<string, OrderCharge> }>();
  for (const { offer, quantity } of takes) {
    if (quantity.isZero()) continue;
    const order = orders.get(offer.storeId) ?? { beforeTax: ZERO, charges: new Map() };
    order.beforeTax = order.beforeTax.plus(offer.beforeTax.amount.times(quantity));
    for (const charge of offer.orderCharges)
      order.charges.set(charge.name, dearer(order.charges.get(charge.name), charge));
    orders.set(offer.storeId, order);
  }
  const charged = [...orders].flatMap(([storeId, { beforeTax, charges }]) => {
    const total = roundToMinorUnit(money(beforeTax, currency)).amount;
    return [...charges.values()]
      .filter(({ freeFrom }) => freeFrom === null || total.lessThan(roundToMinorUnit(freeFrom).amount))
      .map(({ name, amount }) => ({ storeId, name, amount: roundToMinorUnit(amount) }));
  });
  return charged.sort((a, b) => inOrder(a.storeId, b.storeId) || inOrder(a.name, b.name));
}
