import type { LocalDate } from "../calendar/local-date.ts";
import { roundHalfUp } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";
import type { LeftOutReason, NoPriceReason } from "../prices/offer.ts";
import type { Against } from "../prices/what-it-means.ts";
import type { LoggedPrice } from "./logged-price.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";

/** A price beside another, as the parts of a sentence: on which side, and by how much. */
export type SideText = Readonly<{ side: "under" | "over" | "same"; by: string; other: string }>;

/** What a logged price means, as text: one part for each sentence that can be said; null where it cannot. */
export type LoggedPriceText = Readonly<{
  allIn: string | null;
  noPrice: NoPriceReason | null;
  unit: PurchaseUnit | null;
  leftOut: LeftOutReason | null;
  beforeImportCharges: boolean;
  lowest:
    | Readonly<{ kind: "first" }>
    | Readonly<{ kind: "ever"; sightings: number; months: number }>
    | Readonly<{ kind: "since"; months: number }>
    | null;
  /** storeId null: several stores together make the best offer elsewhere. */
  best: (SideText & Readonly<{ storeId: string | null }>) | null;
  going: (SideText & Readonly<{ stores: number }>) | null;
  paid: (SideText & Readonly<{ on: LocalDate; projectIds: readonly string[] }>) | null;
  covers: Readonly<{ quantity: string; exact: string; open: string; all: boolean }> | null;
  /** All of `covers` bought here beside bought elsewhere. */
  total: SideText | null;
}>;

function sided(difference: Money, other: Money, text: (value: Money) => string): SideText {
  const size = { amount: difference.amount.abs(), currency: difference.currency };
  const by = text(size);
  // What reads as 0.00 is said to be the same.
  const none = text({ ...size, amount: size.amount.times(0) });
  const side = by === none ? "same" : difference.amount.isNegative() ? "under" : "over";
  return { side, by, other: text(other) };
}

const SAME_PLACES = 10;

function storeOfBest(logged: LoggedPrice, best: Against): string | null {
  const offer = logged.elsewhere;
  if (offer === null) return null;
  const same = roundHalfUp(offer.price.amount, SAME_PLACES).equals(
    roundHalfUp(best.other.amount, SAME_PLACES),
  );
  return same ? offer.storeId : null;
}

function lowestPart({ means }: LoggedPrice): LoggedPriceText["lowest"] {
  if (!means.price.known) return null;
  // Earlier days only are counted (`lowestSince`): beside a price of the same day it is not the first one.
  if (means.observations === 0)
    return means.againstBestElsewhere === null && !means.going.known ? { kind: "first" } : null;
  if (means.lowestInMonths === null)
    return { kind: "ever", sightings: means.observations, months: means.knownMonths };
  return { kind: "since", months: means.lowestInMonths };
}

/** The meaning of a logged price for reading. Rounds: money to the minor unit. */
export function loggedPriceText(logged: LoggedPrice, locale: string): LoggedPriceText {
  const { means, paid } = logged;
  const each = (against: Against) =>
    sided(against.difference, against.other, (value) => unitPriceText(value, locale));
  const best = means.againstBestElsewhere;
  return {
    allIn: means.price.known ? unitPriceText(means.price.price, locale) : null,
    noPrice: means.price.known ? null : means.price.reason,
    unit: means.price.known ? means.price.unit : null,
    leftOut: logged.leftOut,
    beforeImportCharges: means.beforeImportCharges,
    lowest: lowestPart(logged),
    best: best ? { ...each(best), storeId: storeOfBest(logged, best) } : null,
    going:
      means.againstGoing && means.going.known
        ? { ...each(means.againstGoing), stores: means.going.stores }
        : null,
    paid:
      means.againstLastPaid && paid
        ? { ...each(means.againstLastPaid), on: paid.on, projectIds: paid.projectIds }
        : null,
    covers: means.covers.isZero()
      ? null
      : {
          quantity: quantityText(means.covers, locale),
          exact: means.covers.toFixed(),
          open: quantityText(logged.open, locale),
          all: means.covers.greaterThanOrEqualTo(logged.open),
        },
    total:
      means.totalDifference && means.totalElsewhere
        ? sided(means.totalDifference, means.totalElsewhere, (value) => moneyText(value, locale))
        : null,
  };
}
