import { type LocalDate, within } from "../calendar/local-date.ts";
import { ONE } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import type { KnownRate } from "../rates/exchange-rate.ts";
import { inCurrency } from "../rates/rate-of-day.ts";
import { importChargesOf } from "./foreign-store.ts";
import type { Observation } from "./observation.ts";
import type { AllInPrice, OrderCharge } from "./offer.ts";
import { isImportRecovered, type OwnCurrencyPrice, ownCurrencyPrice } from "./own-currency-price.ts";
import { rateKept } from "./rate-kept.ts";
import { seenDay } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";

const NO_CHARGES: readonly OrderCharge[] = [];
type Known = Extract<OwnCurrencyPrice, { known: true }>;

/** Order fees of the tag, with the tax on them that is cost, in the wanted currency. */
function feesPerOrder(
  observation: Observation,
  own: Known,
  to: CurrencyCode,
  rate: KnownRate,
): OrderCharge[] {
  return observation.fees
    .filter((fee) => fee.basis === "order" && fee.amount !== null && !fee.amount.isZero())
    .map(({ name, amount, freeFrom, taxable }) => ({
      name,
      amount: inCurrency(
        money((amount ?? ONE).times(taxable ? own.feeShare.plus(ONE) : ONE), own.currency),
        to,
        rate,
      ),
      freeFrom: freeFrom === null ? null : inCurrency(money(freeFrom, own.currency), to, rate),
    }));
}

/** Import charges per order are in the store's currency; null: no rate for it. */
function importPerOrder(
  own: Known,
  valuation: Valuation,
  to: CurrencyCode,
  day: LocalDate,
): OrderCharge[] | null {
  const charges = importChargesOf(own.store, valuation).filter(
    ({ perOrder, from, until, recoverable }) =>
      perOrder !== null &&
      !perOrder.isZero() &&
      within(day, from, until) &&
      !isImportRecovered(recoverable, valuation, day),
  );
  if (charges.length === 0) return [];
  const rate = rateKept(valuation, own.store.currency, to, day);
  if (!rate.known) return null;
  return charges.map(({ name, perOrder }) => ({
    name,
    amount: inCurrency(money(perOrder ?? ONE, own.store.currency), to, rate),
    freeFrom: null,
  }));
}

/** `allInPrice` in any currency: by the day's rate from the tag's currency. Rounds: never. */
export function allInPriceIn(
  currency: CurrencyCode,
  observation: Observation,
  material: Material,
  valuation: Valuation,
  day: LocalDate,
): AllInPrice {
  const own = ownCurrencyPrice(observation, material, valuation, day);
  if (!own.known) return own;
  const rate = rateKept(valuation, own.currency, currency, day);
  if (!rate.known) return { known: false, reason: "rate-unknown" };
  const border = importPerOrder(own, valuation, currency, day);
  if (border === null) return { known: false, reason: "rate-unknown" };
  const fees = observation.fees.length === 0 ? [] : feesPerOrder(observation, own, currency, rate);
  const same = own.currency === currency;
  const converted = (amount: typeof own.price) =>
    same ? { amount, currency } : inCurrency({ amount, currency: own.currency }, currency, rate);
  const price = converted(own.price);
  return {
    known: true,
    price,
    unit: material.purchaseUnit,
    beforeTax: converted(own.beforeTax),
    cash: own.cash === own.price ? price : converted(own.cash),
    orderCharges: border.length + fees.length === 0 ? NO_CHARGES : [...fees, ...border],
    staleRate: rate.stale,
  };
}

/**
 * An observation reduced to one basis: home currency, per purchase unit, after discount, fees, import charges and the tax
 * that is cost, as it would be bought on `day` (R2, R4): the day's tax, discount, charges and exchange rate. Order
 * charges stand apart. Formula: `ownCurrencyPrice`, then x the rate of the day. Rounds: never (only divisions that do
 * not end, to 40 digits). Not known (no amount, unit, store, region, tax or rate): the reason, never a guess.
 * Source: rules.md R2-R4.
 */
export function allInPrice(
  observation: Observation,
  material: Material,
  valuation: Valuation,
  day: LocalDate,
): AllInPrice {
  return allInPriceIn(valuation.homeCurrency, observation, material, valuation, day);
}

/** What was seen, valued on its own day: its day's tax and rate. History never moves (R2). Rounds: never. */
export function valuedAsSeen(observation: Observation, material: Material, valuation: Valuation): AllInPrice {
  return allInPrice(observation, material, valuation, seenDay(observation, valuation));
}
