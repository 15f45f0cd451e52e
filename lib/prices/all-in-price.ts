import type { LocalDate } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import type { Observation } from "./observation.ts";
import type { AllInPrice } from "./offer.ts";
import type { Valuation } from "./valuation.ts";

export function allInPrice(
  _observation: Observation,
  _material: Material,
  _valuation: Valuation,
  _day: LocalDate,
): AllInPrice {
  throw new Error("not built yet");
}

export function valuedAsSeen(observation: Observation, material: Material, valuation: Valuation): AllInPrice {
  return allInPrice(observation, material, valuation, observation.seenOn);
}
