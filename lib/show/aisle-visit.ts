import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type Money, times } from "../money/money.ts";
import type { Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import { openedMaterial, snapshotValuation } from "./aisle-opened.ts";
import type { AisleSnapshot, SnapshotMaterial } from "./aisle-snapshot.ts";

/** An offer that lapses within so many days is about to. Judgement, not fact. */
export const LAPSES_SOON = 7;

/**
 * Something to look at in a store. stale: its price here is old and money rests on it; lapses: its offer here ends soon;
 * unseen: it is still to be bought, and no price of it is known here. money: what is open at that price, home currency.
 */
export type ToCheck = Readonly<{
  materialId: string;
  name: string;
  unit: PurchaseUnit;
  open: Decimal;
  why: "stale" | "lapses" | "unseen";
  ageDays: number | null;
  lapsesOn: LocalDate | null;
  money: Money | null;
}>;

const ORDER = { lapses: 0, stale: 1, unseen: 2 } as const;

function openOf(plain: SnapshotMaterial): Decimal {
  return plain.needs.reduce((total, need) => total.plus(need.open), ZERO);
}

function checkOf(
  plain: SnapshotMaterial,
  open: Decimal,
  here: readonly Offer[],
  day: LocalDate,
): ToCheck | null {
  const lapsing = here.find(({ lapsesOn }) => lapsesOn !== null && daysBetween(day, lapsesOn) <= LAPSES_SOON);
  const shelf = here.find(({ terms }) => terms === "shelf");
  const about = lapsing ?? shelf ?? here[0];
  if (about !== undefined && about !== lapsing && !about.stale) return null;
  return {
    materialId: plain.id,
    name: plain.name,
    unit: plain.unit,
    open,
    why: about === undefined ? "unseen" : about === lapsing ? "lapses" : "stale",
    ageDays: about?.ageDays ?? null,
    lapsesOn: lapsing?.lapsesOn ?? null,
    money: about === undefined ? null : times(about.price, open),
  };
}

/**
 * What to check at a store on a day, from a snapshot: offers about to lapse first, then stale prices with the most money on
 * them, then what has no price there. Only what some job still needs. Units: purchase units, home currency, all in.
 * Rounds: never.
 */
export function toCheckAt(snapshot: AisleSnapshot, storeId: string, day: LocalDate): ToCheck[] {
  const valuation = snapshotValuation(snapshot, day);
  return snapshot.materials
    .flatMap((plain) => {
      const open = openOf(plain);
      if (open.isZero()) return [];
      const { material, seen } = openedMaterial(plain, snapshot);
      const { offers } = offersOn(valuation.today, seen, material, valuation);
      const here = offers.filter((offer) => offer.storeId === storeId);
      return checkOf(plain, open, here, valuation.today) ?? [];
    })
    .sort(
      (a, b) =>
        ORDER[a.why] - ORDER[b.why] ||
        (b.money?.amount ?? ZERO).comparedTo(a.money?.amount ?? ZERO) ||
        a.name.localeCompare(b.name),
    );
}
