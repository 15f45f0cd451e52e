import type { LocalDate } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import type { Observation } from "./observation.ts";
import type { LeftOut, Offer } from "./offer.ts";
import type { Valuation } from "./valuation.ts";

export type OffersOfDay = Readonly<{ offers: Offer[]; leftOut: LeftOut[] }>;

export function offersOn(
  _day: LocalDate,
  _observations: readonly Observation[],
  _material: Material,
  _valuation: Valuation,
): OffersOfDay {
  throw new Error("not built yet");
}
