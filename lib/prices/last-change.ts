import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { Money } from "../money/money.ts";
import type { Observation, Terms } from "./observation.ts";
import type { Valuation } from "./valuation.ts";

/** price: as seen, home currency, all in, per purchase unit, unrounded. percent: from the sighting before it at that store, of the same terms and minimum; null for a first one. */
export type LastChange = Readonly<{
  observationId: string;
  storeId: string;
  seenOn: LocalDate;
  terms: Terms;
  price: Money;
  before: Money | null;
  percent: Decimal | null;
}>;

export function lastChange(
  _day: LocalDate,
  _observations: readonly Observation[],
  _material: Material,
  _valuation: Valuation,
): LastChange | null {
  throw new Error("not built yet");
}
