import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import type { Observation } from "./observation.ts";
import type { Valuation } from "./valuation.ts";

/** The day a sighting counts from: its own; one day ahead of the workspace's today counts as today (R11). */
export function seenDay(observation: Observation, valuation: Valuation): LocalDate {
  const { seenOn } = observation;
  return seenOn > valuation.today && seenOn === plusDays(valuation.today, 1) ? valuation.today : seenOn;
}

/** Sightings in the order they were made: by day, then by id (ours grow with time). A negative number: `a` is the earlier. */
export function bySighting(a: Observation, b: Observation): number {
  if (a.seenOn !== b.seenOn) return a.seenOn < b.seenOn ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/** Days after which a price of the material is stale: its own recheck interval, else the workspace's (R5). */
export function recheckDays(material: Material, valuation: Valuation): number {
  return material.recheckDays ?? valuation.recheckDays;
}
