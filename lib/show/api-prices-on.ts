import type * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { boughtAlone } from "../prices/bought-alone.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import type { Observation } from "../prices/observation.ts";
import { offersOn } from "../prices/offers.ts";
import type { Valuation } from "../prices/valuation.ts";
import { apiPrices, type pricesShape } from "./api-prices.ts";

/** quantity: purchase units to buy by themselves. acceptsUsed: all of them may be used ones. */
export type PricesAsked = Readonly<{ quantity: Decimal; acceptsUsed: boolean }>;

/**
 * What a material costs on a day: offers in force, the cheapest way to buy a quantity of it alone, the going price.
 * Units: home currency per purchase unit. Rounds: as `apiPrices`. Source: rules.md R5-R7.
 */
export function apiPricesOn(
  day: LocalDate,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
  { quantity, acceptsUsed }: PricesAsked,
): z.output<typeof pricesShape> {
  const { offers, leftOut } = offersOn(day, observations, material, valuation);
  const step = purchaseStep(material.purchaseUnit);
  const currency = valuation.homeCurrency;
  return apiPrices({
    asOf: day,
    currency,
    unit: material.purchaseUnit,
    offers,
    leftOut,
    best: boughtAlone(offers, quantity, { step, used: acceptsUsed ? quantity : ZERO, currency }),
    going: goingPriceOn(day, observations, material, valuation),
  });
}
