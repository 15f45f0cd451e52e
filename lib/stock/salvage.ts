import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money, roundToMinorUnit, sum } from "../money/money.ts";
import type { Requirement } from "../projects/project.ts";
import { revisionOn } from "../projects/revisions.ts";
import type { Lot, Paid } from "./lot.ts";
import type { TallyRow } from "./tally.ts";

/** What getting salvage took, each in one currency: own hours at a rate, carrying it home, what its owner was paid (tax in it). */
export type SalvageMoney = Readonly<{
  hours: Decimal;
  hourlyRate: Decimal;
  hauling: Decimal;
  purchasePrice: Decimal;
  currency: CurrencyCode;
}>;

/** Where a salvaged lot came from, what it took, and how it was counted. projectId: reclaimed from that job. */
export type SalvageDetail = SalvageMoney &
  Readonly<{
    lotId: string;
    reclaimedFrom: string | null;
    projectId: string | null;
    tally: readonly TallyRow[];
  }>;

/**
 * What salvage cost to get: hours x rate + hauling + purchase price.
 * Units: the currency entered. Rounds: hours x rate, once, half up to the minor unit. Zero is allowed: what was given and
 * fetched on the way cost nothing. Source: issue of the stock step; rules.md R9 (price 0 for salvage).
 */
export function salvageCost({ hours, hourlyRate, hauling, purchasePrice, currency }: SalvageMoney): Money {
  const labour = roundToMinorUnit(money(hours.times(hourlyRate), currency));
  return sum([labour, money(hauling, currency), money(purchasePrice, currency)], currency);
}

/**
 * A salvaged lot's receipt: what it cost to get, whole. The one place that makes it. No tax is reckoned: what was paid is as
 * paid, and own hours carry none. Units: the currency entered.
 */
export function salvagePaid(given: SalvageMoney): Paid {
  const { amount, currency } = salvageCost(given);
  return { amount, currency, taxIncluded: true, taxRegion: null, exemptFrom: [], fees: [], taxes: null };
}

/** Whether a lot is used material: salvaged, or bought at the terms "used". Source: rules.md R5. */
export function isUsed({ origin, terms }: Pick<Lot, "origin" | "terms">): boolean {
  return origin === "salvaged" || terms === "used";
}

/**
 * Whether a lot may be set aside or drawn for a requirement on a day: used material only where the requirement, as it stood
 * on that day, accepts used (default no; before its first revision as the first says). Source: rules.md R5, R8.
 */
export function mayServe(
  lot: Pick<Lot, "origin" | "terms">,
  requirement: Requirement,
  on: LocalDate,
): boolean {
  if (!isUsed(lot)) return true;
  const revision = revisionOn(requirement, on) ?? requirement.revisions[0];
  return revision?.acceptsUsed === true;
}
