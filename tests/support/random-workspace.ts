import * as fc from "fast-check";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal } from "../../lib/decimal.ts";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import type { Material } from "../../lib/materials/material.ts";
import { money } from "../../lib/money/money.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import type { Requirement } from "../../lib/projects/project.ts";
import { fee, observation, SHEET, TODAY } from "./price-example.ts";
import { recordedLot } from "./random-stock.ts";
import { factsOf, needOf, projectOf, revisionOf, SEVEN_PERCENT } from "./stock-example.ts";

export const BOARD: Material = { ...SHEET, id: "board", name: "a board" };

/** A sighting at "near" or "far", `ago` days before today. */
export function someObservation(materials = ["sheet", "board"], ago = { min: 0, max: 100 }) {
  return fc
    .record({
      materialId: fc.constantFrom(...materials),
      storeId: fc.constantFrom("near", "far"),
      terms: fc.constantFrom("shelf", "shelf", "special", "clearance", "quantity-break", "used"),
      cents: fc.integer({ min: 50, max: 4000 }),
      ago: fc.integer(ago),
      min: fc.integer({ min: 2, max: 20 }),
      max: fc.option(fc.integer({ min: 1, max: 30 }), { freq: 4 }),
      pack: fc.option(fc.integer({ min: 2, max: 4 }), { freq: 4 }),
      lasts: fc.option(fc.integer({ min: 0, max: 60 })),
      delivered: fc.boolean(),
    })
    .map(
      ({ materialId, storeId, terms, cents, ago: days, min, max, pack, lasts, delivered }): Observation => {
        const seenOn = plusDays(TODAY, -days);
        const breaks = terms === "quantity-break";
        return observation(decimal(cents).dividedBy(100).toFixed(2), {
          materialId,
          storeId,
          terms: terms as Observation["terms"],
          seenOn,
          minQuantity: breaks ? decimal(min) : null,
          maxQuantity: max === null ? null : decimal(breaks ? max + min : max),
          packSize: pack === null ? null : decimal(pack),
          until: lasts === null || terms === "shelf" || breaks ? null : plusDays(seenOn, lasts),
          fees: delivered
            ? [fee("delivery", { amount: decimal(25), basis: "order", freeFrom: decimal(400) })]
            : [],
        });
      },
    );
}

/** A requirement for up to sixty sheets or boards. */
function someNeed(id: string, projectId: string): fc.Arbitrary<Requirement> {
  return fc
    .record({
      materialId: fc.constantFrom("sheet", "board"),
      quantity: fc.integer({ min: 1, max: 60 }),
      waste: fc.integer({ min: 0, max: 15 }),
      neededIn: fc.integer({ min: -5, max: 90 }),
    })
    .map(({ materialId, quantity, waste, neededIn }) => {
      const neededBy = plusDays(TODAY, neededIn);
      return needOf(id, revisionOf(quantity, { wastePercent: decimal(waste), neededBy }), {
        materialId,
        projectId,
      });
    });
}

/** Two projects, four requirements, lots with what happened to them, and what was seen. */
export const someWorkspace: fc.Arbitrary<ExposureFacts> = fc
  .record({
    requirements: fc.tuple(
      someNeed("a", "job"),
      someNeed("b", "job"),
      someNeed("c", "job"),
      someNeed("d", "other"),
    ),
    observations: fc.array(someObservation(), { maxLength: 14 }),
    stock: fc.tuple(recordedLot("lot"), recordedLot("second")),
  })
  .map(({ requirements, observations, stock }) =>
    factsOf({
      materials: [SHEET, BOARD],
      projects: [projectOf("job"), projectOf("other")],
      requirements,
      observations,
      lots: stock.map(({ lot }) => lot),
      events: stock.flatMap(({ events }) => events),
      moneyRates: SEVEN_PERCENT,
    }),
  );

function dearer<T extends { amount: Decimal | null; freeFrom: Decimal | null }>(one: T, factor: number): T {
  return { ...one, amount: one.amount?.times(factor) ?? null, freeFrom: one.freeFrom?.times(factor) ?? null };
}

/** The same workspace where everything costs so many times as much: prices, fees, what was paid and what was received. */
export function scaled(facts: ExposureFacts, factor: number): ExposureFacts {
  return {
    ...facts,
    observations: facts.observations.map((seen) => ({
      ...seen,
      amount: seen.amount === null ? null : money(seen.amount.amount.times(factor), seen.amount.currency),
      fees: seen.fees.map((one) => dearer(one, factor)),
    })),
    lots: facts.lots.map((lot) => ({
      ...lot,
      paid: {
        ...lot.paid,
        amount: lot.paid.amount.times(factor),
        fees: lot.paid.fees.map((one) => dearer(one, factor)),
      },
    })),
    events: facts.events.map((event) => ({
      ...event,
      amount: event.amount === null ? null : money(event.amount.amount.times(factor), event.amount.currency),
    })),
  };
}
