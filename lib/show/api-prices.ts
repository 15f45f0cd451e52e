import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { BoughtAlone } from "../prices/bought-alone.ts";
import {
  type Cover,
  type GoingPrice,
  LEFT_OUT_REASONS,
  type LeftOut,
  NO_PRICE_REASONS,
  type Offer,
} from "../prices/offer.ts";
import type { SeriesPoint } from "../prices/series.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  exactDigits,
  exactDigitsOrNull,
  totalDigits,
  unitPriceDigits,
  unitPriceShape,
} from "./api-fields.ts";

const offerShape = z.strictObject({
  observationId: z.string(),
  storeId: z.string(),
  terms: z.string(),
  seenOn: dayShape,
  ageDays: z.int(),
  stale: z.boolean(),
  inForce: z.literal(true),
  allIn: unitPriceShape,
  minQuantity: decimalShape,
  maxQuantity: decimalShape.nullable(),
  packSize: decimalShape,
  lapsesOn: dayShape.nullable(),
  orderCharges: z.array(
    z.strictObject({ name: z.string(), amount: decimalShape, freeFrom: decimalShape.nullable() }),
  ),
  beforeImportCharges: z.boolean(),
  staleRate: z.boolean(),
});

function apiOffer(offer: Offer): z.output<typeof offerShape> {
  const { observationId, storeId, terms, seenOn, ageDays, stale, price, unit, lapsesOn } = offer;
  return {
    observationId,
    storeId,
    terms,
    seenOn,
    ageDays,
    stale,
    inForce: true,
    allIn: { amount: unitPriceDigits(price), currency: price.currency, unit },
    minQuantity: exactDigits(offer.minQuantity),
    maxQuantity: exactDigitsOrNull(offer.maxQuantity),
    packSize: exactDigits(offer.packSize),
    lapsesOn,
    orderCharges: offer.orderCharges.map((charge) => ({
      name: charge.name,
      amount: totalDigits(charge.amount),
      freeFrom: charge.freeFrom === null ? null : totalDigits(charge.freeFrom),
    })),
    beforeImportCharges: offer.beforeImportCharges,
    staleRate: offer.staleRate,
  };
}

export const takeShape = z.strictObject({
  observationId: z.string(),
  storeId: z.string(),
  quantity: decimalShape,
  cost: decimalShape,
});

/** So much of each offer taken; costs for reading, rounded to the minor unit. */
export function apiTakes(takes: Cover["takes"]): z.output<typeof takeShape>[] {
  return takes.map(({ offer, quantity, cost }) => ({
    observationId: offer.observationId,
    storeId: offer.storeId,
    quantity: exactDigits(quantity),
    cost: totalDigits(cost),
  }));
}

const bestShape = z.strictObject({
  quantity: decimalShape,
  cost: decimalShape.describe("all in, without charges per order"),
  charges: z.array(z.strictObject({ storeId: z.string(), name: z.string(), amount: decimalShape })),
  total: decimalShape,
  takes: z.array(takeShape),
  over: decimalShape,
  uncovered: decimalShape,
  restsOnStale: decimalShape,
});

function apiBest({ cover, charges, total }: BoughtAlone): z.output<typeof bestShape> {
  return {
    quantity: exactDigits(cover.quantity),
    cost: totalDigits(cover.cost),
    charges: charges.map(({ storeId, name, amount }) => ({ storeId, name, amount: totalDigits(amount) })),
    total: totalDigits(total),
    takes: apiTakes(cover.takes),
    over: exactDigits(cover.over),
    uncovered: exactDigits(cover.uncovered),
    restsOnStale: totalDigits(cover.restsOnStale),
  };
}

const goingShape = unitPriceShape.extend({
  stores: z.int(),
  kind: z.enum(["fresh", "older", "interpolated"]),
});

export const pricesShape = z.strictObject({
  asOf: dayShape,
  currency: currencyShape,
  unit: z.string(),
  offers: z.array(offerShape),
  bestOffer: bestShape
    .nullable()
    .describe("the cheapest way to buy the quantity by itself; null: nothing can be bought"),
  goingPrice: goingShape.nullable().describe("null: not known"),
  leftOut: z.array(
    z.strictObject({ observationId: z.string(), storeId: z.string(), reason: z.enum(LEFT_OUT_REASONS) }),
  ),
});

type Prices = Readonly<{
  asOf: LocalDate;
  currency: string;
  unit: string;
  offers: readonly Offer[];
  leftOut: readonly LeftOut[];
  best: BoughtAlone;
  going: GoingPrice;
}>;

/** What a material costs on a day. Unit prices to 6 places for reading; costs come from the unrounded prices. */
export function apiPrices({
  asOf,
  currency,
  unit,
  offers,
  leftOut,
  best,
  going,
}: Prices): z.output<typeof pricesShape> {
  return {
    asOf,
    currency,
    unit,
    offers: offers.map(apiOffer),
    bestOffer: best.cover.takes.length === 0 ? null : apiBest(best),
    goingPrice: going.known
      ? {
          amount: unitPriceDigits(going.price),
          currency: going.price.currency,
          unit: going.unit,
          stores: going.stores,
          kind: going.kind,
        }
      : null,
    leftOut: leftOut.map(({ observationId, storeId, reason }) => ({ observationId, storeId, reason })),
  };
}

export const seriesShape = z.strictObject({
  unit: z.string(),
  currency: z.string().describe('a code, "home" or "as-seen"'),
  points: z.array(
    z.strictObject({
      observationId: z.string(),
      storeId: z.string(),
      seenOn: dayShape,
      terms: z.string(),
      minQuantity: decimalShape.nullable(),
      beforeImportCharges: z.boolean(),
      allIn: unitPriceShape.nullable(),
      notKnown: z.enum(NO_PRICE_REASONS).nullable().describe("why there is no price"),
    }),
  ),
});

/** Prices as seen, each all in at its own day. Unit prices to 6 places for reading. */
export function apiSeries(
  points: readonly SeriesPoint[],
  unit: string,
  currency: string,
): z.output<typeof seriesShape> {
  return {
    unit,
    currency,
    points: points.map((point) => ({
      observationId: point.observationId,
      storeId: point.storeId,
      seenOn: point.seenOn,
      terms: point.terms,
      minQuantity: exactDigitsOrNull(point.minQuantity),
      beforeImportCharges: point.beforeImportCharges,
      allIn: point.known
        ? { amount: unitPriceDigits(point.price), currency: point.price.currency, unit }
        : null,
      notKnown: point.known ? null : point.reason,
    })),
  };
}
