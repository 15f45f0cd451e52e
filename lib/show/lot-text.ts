import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { ONE, ZERO } from "../decimal.ts";
import { type ExposureFacts, groupedBy, materialOf } from "../exposure/exposure-facts.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { add, type Money, money, times } from "../money/money.ts";
import type { SavingRow } from "../savings/savings-figures.ts";
import type { Lot } from "../stock/lot.ts";
import { type LotAccount, lotAccount } from "../stock/lot-account.ts";
import { type LotCost, lotCost } from "../stock/lot-cost.ts";
import type { NoCostReason } from "../stock/receipt-due.ts";
import { type CountText, countText, someText } from "./count-text.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";
import { type GainText, gainText } from "./savings-rows.ts";

/** A lot with where its quantity and its cost are on a day. Purchase units, home currency. */
export type LotOnDay = Readonly<{
  lot: Lot;
  unit: PurchaseUnit;
  cost: LotCost;
  account: LotAccount;
  /** Of what is on hand or on order: free, set aside, both, and at which cost; a cost that is not known counts as nothing. */
  free: Sum;
  setAside: Sum;
  onHand: Sum;
}>;
type Sum = Readonly<{ quantity: typeof ZERO; onOrder: typeof ZERO; cost: Money }>;

function sumOf(account: LotAccount, zero: Money, which: (requirementId: string | null) => boolean): Sum {
  return account.holdings
    .filter((holding) => which(holding.requirementId))
    .reduce<Sum>(
      (total, holding) => ({
        quantity: total.quantity.plus(holding.quantity),
        onOrder: total.onOrder.plus(holding.onOrder),
        cost: add(total.cost, holding.cost),
      }),
      { quantity: ZERO, onOrder: ZERO, cost: zero },
    );
}

/** Every lot ordered by a day, the newest first, with its account on that day. Rounds: costs as in `lotAccount`. */
export function lotsOnDay(
  day: LocalDate,
  facts: Pick<ExposureFacts, "lots" | "events" | "materials" | "valuation">,
): LotOnDay[] {
  const zero = money(ZERO, facts.valuation.homeCurrency);
  const events = groupedBy(facts.events, (event) => event.lotId);
  return facts.lots
    .filter((lot) => lot.orderedOn <= day)
    .map((lot) => {
      const material = materialOf(facts, lot.materialId);
      const cost = lotCost(lot, material, facts.valuation, day);
      const account = lotAccount(lot, cost.known ? cost.cost : zero, events.get(lot.id) ?? [], day);
      return {
        lot,
        unit: material.purchaseUnit,
        cost,
        account,
        free: sumOf(account, zero, (id) => id === null),
        setAside: sumOf(account, zero, (id) => id !== null),
        onHand: sumOf(account, zero, () => true),
      };
    })
    .sort((a, b) => b.lot.orderedOn.localeCompare(a.lot.orderedOn));
}

/** A lot as text. null: nothing, or not known. saving: of what is set aside, at the day's going price. */
export type LotText = Readonly<{
  lotId: string;
  materialId: string;
  unit: PurchaseUnit;
  origin: Lot["origin"];
  storeId: string | null;
  orderedOn: LocalDate;
  ageDays: number;
  storedAt: string | null;
  acquired: CountText;
  onHand: CountText | null;
  free: CountText | null;
  setAside: CountText | null;
  onOrder: string | null;
  cost: string | null;
  /** What one of it cost: lot cost / quantity, for reading. */
  each: string | null;
  noCost: NoCostReason | null;
  beforeImportCharges: boolean;
  saving: GainText | null;
  savingUnknown: boolean;
}>;

function heldSaving(rows: readonly SavingRow[], lotId: string, locale: string) {
  const held = rows.filter((row) => row.kind === "held" && row.lotId === lotId);
  const known = held.flatMap((row) => row.saving ?? []);
  const [first, ...rest] = known;
  return {
    saving:
      first === undefined || known.length < held.length ? null : gainText(rest.reduce(add, first), locale),
    savingUnknown: known.length < held.length,
  };
}

/** A lot for reading. rows: of a savings report of the same day. Rounds: money to the minor unit, quantities to 0.001. */
export function lotText(
  { lot, unit, cost, free, setAside, onHand }: LotOnDay,
  day: LocalDate,
  rows: readonly SavingRow[],
  locale: string,
): LotText {
  return {
    lotId: lot.id,
    materialId: lot.materialId,
    unit,
    origin: lot.origin,
    storeId: lot.storeId,
    orderedOn: lot.orderedOn,
    ageDays: daysBetween(lot.orderedOn, day),
    storedAt: lot.storedAt,
    acquired: countText(lot.quantity, locale),
    onHand: someText(onHand.quantity, locale),
    free: someText(free.quantity, locale),
    setAside: someText(setAside.quantity, locale),
    onOrder: onHand.onOrder.isZero() ? null : quantityText(onHand.onOrder, locale),
    cost: cost.known ? moneyText(onHand.cost, locale) : null,
    each: cost.known ? unitPriceText(times(cost.cost, ONE.dividedBy(lot.quantity)), locale) : null,
    noCost: cost.known ? null : cost.reason,
    beforeImportCharges: cost.known && cost.beforeImportCharges,
    ...heldSaving(rows, lot.id, locale),
  };
}

/** Stock in all: lots with something on hand, at cost, and the free part of it. unknown: lots whose cost is not known. */
export type StockText = Readonly<{ lots: number; cost: string; free: string; unknown: number }>;

/** What lies in stock, at cost. Rounds: nothing further; the costs are in minor units. */
export function stockText(lots: readonly LotOnDay[], currency: Money["currency"], locale: string): StockText {
  const held = lots.filter(({ onHand }) => !onHand.quantity.isZero());
  const zero = money(ZERO, currency);
  return {
    lots: held.length,
    cost: moneyText(
      held.reduce((total, { onHand }) => add(total, onHand.cost), zero),
      locale,
    ),
    free: moneyText(
      held.reduce((total, { free }) => add(total, free.cost), zero),
      locale,
    ),
    unknown: held.filter(({ cost }) => !cost.known).length,
  };
}
