import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Store } from "../prices/store.ts";
import type { Agreed } from "./lot.ts";

/** What an entry says of it; undefined: as the store does it; null: not so this time. */
export type AgreedSaid = Readonly<{ [Field in keyof Agreed]?: Agreed[Field] | undefined }>;
type Usual = Pick<Store, "returnDays" | "priceAdjustmentDays" | "restockingPercent" | "leadDays">;

function after(orderedOn: LocalDate, days: number | null): LocalDate | null {
  return days === null ? null : plusDays(orderedOn, days);
}

/**
 * What is agreed on a lot beside its price: what its entry says, else what its store does as a rule on the day it is
 * bought. It stays with the lot: a store that changes its rules changes no lot.
 *     returnable until = day ordered + the store's return days; the same for price adjustments
 *     expected on = day ordered + lead days, for what has not come in
 * Source: rules.md R9; trade.md section 11 (special orders, returns).
 */
export function agreedOf(
  said: AgreedSaid,
  { orderedOn, awaited }: Readonly<{ orderedOn: LocalDate; awaited: boolean }>,
  store: Usual | null,
): Agreed {
  const leadDays = said.leadDays === undefined ? (store?.leadDays ?? null) : said.leadDays;
  const choose = <T>(given: T | null | undefined, usual: T | null): T | null =>
    given === undefined ? usual : given;
  return {
    leadDays,
    expectedOn: choose(said.expectedOn, awaited ? after(orderedOn, leadDays) : null),
    returnableUntil: choose(said.returnableUntil, after(orderedOn, store?.returnDays ?? null)),
    adjustableUntil: choose(said.adjustableUntil, after(orderedOn, store?.priceAdjustmentDays ?? null)),
    restockingPercent: choose(said.restockingPercent, store?.restockingPercent ?? null),
  };
}
