import type { LocalDate } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import type { Observation } from "./observation.ts";
import type { GoingPrice } from "./offer.ts";
import type { Valuation } from "./valuation.ts";

/** knownOn: the day it is looked at from; sightings after `day` and up to it serve to interpolate only. */
export function goingPriceOn(
  _day: LocalDate,
  _observations: readonly Observation[],
  _material: Material,
  _valuation: Valuation,
  _knownOn: LocalDate = _day,
): GoingPrice {
  throw new Error("not built yet");
}
