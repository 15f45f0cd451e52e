import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { AskingPrice } from "../stock/asking-price.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import type { SalvageDetail } from "../stock/salvage.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  enteredDigits,
  exactDigits,
  momentShape,
} from "./api-fields.ts";
import { apiLot, lotShape } from "./api-lot.ts";

export const salvageShape = z.strictObject({
  lot: lotShape.describe("its paid amount is hours x hourlyRate + hauling + purchasePrice"),
  reclaimedFrom: z.string().nullable(),
  projectId: z.string().nullable(),
  hours: decimalShape,
  hourlyRate: decimalShape,
  hauling: decimalShape,
  purchasePrice: decimalShape,
  currency: currencyShape,
  tally: z.array(z.strictObject({ pieces: decimalShape, length: z.string().nullable() })),
});

/** A salvaged lot with what it took to get and how it was counted. Rounds: never. */
export function apiSalvage(
  lot: Lot & Readonly<{ deletedAt?: string | null }>,
  detail: SalvageDetail,
  events: readonly StockEvent[],
  day: LocalDate,
): z.output<typeof salvageShape> {
  const { reclaimedFrom, projectId, currency } = detail;
  return {
    lot: apiLot(lot, events, day),
    reclaimedFrom,
    projectId,
    hours: exactDigits(detail.hours),
    hourlyRate: enteredDigits(detail.hourlyRate, currency),
    hauling: enteredDigits(detail.hauling, currency),
    purchasePrice: enteredDigits(detail.purchasePrice, currency),
    currency,
    tally: detail.tally.map(({ pieces, length }) => ({ pieces: exactDigits(pieces), length })),
  };
}

export const askingPriceShape = z.strictObject({
  id: z.string(),
  lotId: z.string(),
  amount: decimalShape.nullable().describe("for one purchase unit; null: no longer for sale"),
  currency: currencyShape.nullable(),
  since: dayShape,
  note: z.string().nullable(),
  undoneAt: momentShape.nullable(),
});

/** What is asked for one of a lot from a day on. Rounds: never. */
export function apiAskingPrice(
  asked: AskingPrice & Readonly<{ undoneAt?: string | null }>,
): z.output<typeof askingPriceShape> {
  const { id, lotId, amount, since, note } = asked;
  return {
    id,
    lotId,
    amount: amount === null ? null : enteredDigits(amount.amount, amount.currency),
    currency: amount?.currency ?? null,
    since,
    note,
    undoneAt: asked.undoneAt ?? null,
  };
}
