import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { money, sum } from "../money/money.ts";
import type { GoingPrice } from "../prices/offer.ts";
import { type AskingPrice, askedFor, askingOn, salesBeside } from "../stock/asking-price.ts";
import { goingValue } from "../stock/held-saving.ts";
import type { StockEvent } from "../stock/lot.ts";
import { type SalvageDetail, salvageCost } from "../stock/salvage.ts";
import { piecesOf, type TallyRow } from "../stock/tally.ts";
import { type CountText, countText } from "./count-text.ts";
import { dayText } from "./day-text.ts";
import type { LotOnDay } from "./lot-text.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";
import { percentOfShare } from "./share-typed.ts";

/** A tally as one line: "12 × 8 ft, 5 × 10 ft 3 in". Rounds: never. */
export function tallyText(rows: readonly TallyRow[], locale: string): string {
  return rows
    .map(({ pieces, length }) => [quantityText(pieces, locale), length].filter(Boolean).join(" × "))
    .join(", ");
}

/** What salvage took, line by line, as text in the currency entered. Rounds: money to the minor unit. */
export function salvageLines(detail: SalvageDetail, locale: string) {
  const text = (amount: Decimal) => moneyText(money(amount, detail.currency), locale);
  return {
    tally: tallyText(detail.tally, locale),
    pieces: quantityText(piecesOf(detail.tally), locale),
    hours: quantityText(detail.hours, locale),
    rate: text(detail.hourlyRate),
    labour: text(salvageCost({ ...detail, hauling: ZERO, purchasePrice: ZERO }).amount),
    hauling: text(detail.hauling),
    purchasePrice: text(detail.purchasePrice),
    whole: text(salvageCost(detail).amount),
    currency: detail.currency,
  };
}

/** Salvage on hand, for reading. replacement null: no going price of it new is known. */
export type SalvageRowText = Readonly<{
  lotId: string;
  materialId: string;
  unit: PurchaseUnit;
  onHand: CountText;
  condition: string;
  cost: string | null;
  replacement: string | null;
  going: Readonly<{ price: string; kind: "fresh" | "older" | "interpolated" }> | null;
}>;

/** What is on hand of a salvaged lot and what new material in its place would be worth. Rounds: money to the minor unit. */
export function salvageRow(
  { lot, unit, onHand, cost }: LotOnDay,
  going: GoingPrice,
  locale: string,
): SalvageRowText {
  const worth = goingValue(lot, onHand.quantity, going);
  return {
    lotId: lot.id,
    materialId: lot.materialId,
    unit,
    onHand: countText(onHand.quantity, locale),
    condition: percentOfShare(lot.condition, locale),
    cost: cost.known ? moneyText(onHand.cost, locale) : null,
    replacement: worth === null ? null : moneyText(worth, locale),
    going: going.known ? { price: unitPriceText(going.price, locale), kind: going.kind } : null,
  };
}

/** A lot up for sale, or sold from, for reading. asked null: not for sale on the day. */
export type SaleRowText = Readonly<{
  lotId: string;
  materialId: string;
  unit: PurchaseUnit;
  free: CountText;
  freeExact: string;
  asked: Readonly<{
    each: string;
    whole: string;
    wholeExact: string;
    since: string;
    currency: string;
  }> | null;
  sold: Readonly<{ quantity: string; amount: string; difference: string | null }> | null;
}>;

/** What is asked for a lot on a day and what some of it has been sold for. Rounds: money to the minor unit. */
export function saleRow(
  { lot, unit, free }: LotOnDay,
  asked: readonly AskingPrice[],
  events: readonly StockEvent[],
  day: LocalDate,
  locale: string,
): SaleRowText {
  const asking = askingOn(asked, lot.id, day);
  const sales = salesBeside(asked, lot.id, events);
  const [first] = sales;
  const one = sales.filter((sale) => sale.sold.currency === first?.sold.currency);
  const differences = one.flatMap(({ difference }) => difference ?? []);
  const whole = asking?.amount ? askedFor(asking.amount, free.quantity) : null;
  return {
    lotId: lot.id,
    materialId: lot.materialId,
    unit,
    free: countText(free.quantity, locale),
    freeExact: free.quantity.toFixed(),
    asked:
      asking?.amount && whole !== null
        ? {
            each: unitPriceText(asking.amount, locale),
            whole: moneyText(whole, locale),
            wholeExact: whole.amount.toFixed(),
            since: dayText(asking.since, locale),
            currency: asking.amount.currency,
          }
        : null,
    sold:
      first === undefined
        ? null
        : {
            quantity: quantityText(
              one.reduce((total, { event }) => total.plus(event.quantity), ZERO),
              locale,
            ),
            amount: moneyText(
              sum(
                one.map(({ sold }) => sold),
                first.sold.currency,
              ),
              locale,
              { currency: true },
            ),
            difference:
              differences.length < one.length
                ? null
                : moneyText(sum(differences, first.sold.currency), locale, { signed: true }),
          },
  };
}
