import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Observation } from "../prices/observation.ts";
import { lowestAmong } from "./aisle-lows.ts";
import { openedMaterial, snapshotValuation } from "./aisle-opened.ts";
import type { AisleSnapshot, SnapshotMaterial } from "./aisle-snapshot.ts";
import { type LoggedPrice, loggedPriceAmong, type OpenNeed } from "./logged-price.ts";
import { type LoggedPriceText, loggedPriceText } from "./logged-price-text.ts";

/** What happened on the phone since the snapshot: prices logged, ids of prices taken back, quantities bought by need. */
export type Since = Readonly<{
  seen: readonly Observation[];
  gone: ReadonlySet<string>;
  bought: ReadonlyMap<string, Decimal>;
}>;

export const NOTHING_SINCE: Since = { seen: [], gone: new Set(), bought: new Map() };

const NOT_TOLD = { lowestInMonths: null, lowestEver: false, knownMonths: 0, observations: 0 } as const;

/** lowestTold false: the price is of an earlier day than the snapshot sums up to, so nothing is said of lows. */
export type AisleVerdict = Readonly<{ logged: LoggedPrice; lowestTold: boolean }>;

/** A need less what was bought for it since, down to nothing. */
function stillOpen(needs: readonly OpenNeed[], bought: Since["bought"]): OpenNeed[] {
  return needs.flatMap((need) => {
    const open = need.open.minus(bought.get(need.requirementId) ?? ZERO);
    return open.greaterThan(ZERO) ? [{ ...need, open }] : [];
  });
}

/**
 * What a price means, worked out on the phone: `loggedPrice` from a snapshot and from what happened since. For the same
 * facts and day it is the server's, to the cent (a law holds it there). Rounds: as `whatItMeans` does. Not known: null.
 */
export function aisleVerdict(
  observation: Observation,
  plain: SnapshotMaterial,
  snapshot: AisleSnapshot,
  day: LocalDate,
  since: Since = NOTHING_SINCE,
): AisleVerdict {
  const valuation = snapshotValuation(snapshot, day);
  const { material, seen, needs, paid } = openedMaterial(plain, snapshot);
  const known = new Set(seen.map(({ id }) => id));
  const later = since.seen.filter(({ id, materialId }) => materialId === plain.id && !known.has(id));
  const all = [...seen, ...later].filter(({ id }) => !since.gone.has(id));
  const lowest = lowestAmong(observation, plain.lows, all, material, valuation);
  const around = {
    day: valuation.today,
    material,
    valuation,
    needs: stillOpen(needs, since.bought),
    paid,
    lowest: lowest ?? NOT_TOLD,
  };
  return { logged: loggedPriceAmong(observation, all, around), lowestTold: lowest !== null };
}

/** A verdict for reading: where lows cannot be told, nothing is said of them. Rounds: as `loggedPriceText`. */
export function aisleVerdictText({ logged, lowestTold }: AisleVerdict, locale: string): LoggedPriceText {
  const text = loggedPriceText(logged, locale);
  return lowestTold ? text : { ...text, lowest: null };
}
