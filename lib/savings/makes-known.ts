import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import { allInPrice } from "../prices/all-in-price.ts";
import type { Observation } from "../prices/observation.ts";
import type { NoPriceReason } from "../prices/offer.ts";
import { recheckDays, seenDay } from "../prices/seen-day.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { LotCost } from "../stock/lot-cost.ts";
import type { SavingRow } from "./savings-figures.ts";

/** Which figure of a row is not known. */
export type UnknownFigure = "going-at-acquisition" | "going-at-use" | "paid" | "received";

/**
 * What would make a figure known: a shelf price of the material at any store within these days, both counted; where there
 * is one already, what it cannot be valued for (`unvalued`). Of a lot: its region, tax or rate; of money received: its rate.
 */
export type MakesKnown =
  | Readonly<{
      figure: "going-at-acquisition" | "going-at-use";
      what: "shelf-price";
      from: LocalDate;
      until: LocalDate;
      unvalued: NoPriceReason | null;
    }>
  | Readonly<{ figure: "paid"; what: "tax-unknown" | "rate-unknown" | "region-unknown" }>
  | Readonly<{ figure: "received"; what: "rate-unknown"; on: LocalDate }>;

/**
 * Days on which a shelf price would give the going price of a day: from three recheck intervals (a year at most) before
 * it up to it. Two sightings it could be drawn between have one of them there, too. Source: rules.md R5, R7.
 */
export function daysThatTell(
  material: Material,
  valuation: Valuation,
  on: LocalDate,
): Readonly<{ from: LocalDate; until: LocalDate }> {
  const reach = Math.min(recheckDays(material, valuation) * DAY_LIMITS.recheckIntervals, DAY_LIMITS.price);
  return { from: plusDays(on, -reach), until: on };
}

/** Why the shelf prices seen within some days say nothing; null: there is none of them, or the newest is fine. */
function unvaluedWithin(
  { from, until }: Readonly<{ from: LocalDate; until: LocalDate }>,
  material: Material,
  observations: readonly Observation[],
  valuation: Valuation,
): NoPriceReason | null {
  const newest = observations
    .filter((one) => one.materialId === material.id && one.terms === "shelf")
    .filter((one) => seenDay(one, valuation) >= from && seenDay(one, valuation) <= until)
    .sort((a, b) => (a.seenOn < b.seenOn ? 1 : -1))[0];
  const price = newest === undefined ? null : allInPrice(newest, material, valuation, until);
  return price === null || price.known ? null : price.reason;
}

/** What a row is judged by, beside itself. day: the one a held row is marked on. */
type Around = Readonly<{
  day: LocalDate;
  material: Material;
  cost: LotCost;
  observations: readonly Observation[];
  valuation: Valuation;
}>;

/** Everything that would make a row's saving, or its split, known; nothing when all of it is. Source: rules.md R7, R9, R10. */
export function makesKnown(row: SavingRow, around: Around): MakesKnown[] {
  const { day, material, cost, observations, valuation } = around;
  const isUsed = row.kind === "drawn" || row.kind === "held";
  const price = (figure: "going-at-acquisition" | "going-at-use", on: LocalDate): MakesKnown => {
    const days = daysThatTell(material, valuation, on);
    const unvalued = unvaluedWithin(days, material, observations, valuation);
    return { figure, what: "shelf-price", ...days, unvalued };
  };
  return [
    ...(cost.known ? [] : [{ figure: "paid", what: cost.reason } as const]),
    ...(isUsed && row.goingAtAcquisition === null ? [price("going-at-acquisition", row.acquiredOn)] : []),
    ...(isUsed && row.goingAtDraw === null ? [price("going-at-use", row.on ?? day)] : []),
    ...(!isUsed && cost.known && row.saving === null && row.on !== null
      ? [{ figure: "received", what: "rate-unknown", on: row.on } as const]
      : []),
  ];
}
