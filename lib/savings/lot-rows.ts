import type { LocalDate } from "../calendar/local-date.ts";
import { type ExposureFacts, materialOf } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import { rateKept } from "../prices/rate-kept.ts";
import type { Requirement } from "../projects/project.ts";
import { inCurrency } from "../rates/rate-of-day.ts";
import { carryingCost } from "../stock/carrying.ts";
import { carryingOf, carryingShare, goingValue, stockSaving } from "../stock/held-saving.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { type Holding, lotAccount, type Withdrawal } from "../stock/lot-account.ts";
import { lotCost } from "../stock/lot-cost.ts";
import { type StorageShares, storageShares } from "../stock/storage-shares.ts";
import type { MarketOfDays } from "./market-of-days.ts";
import { disposalSaving, savingParts } from "./saving-parts.ts";
import type { SavingKind, SavingRow } from "./savings-figures.ts";

/** What the rows of one lot are made from. */
type Makings = Readonly<{
  day: LocalDate;
  facts: ExposureFacts;
  market: MarketOfDays;
  requirements: ReadonlyMap<string, Requirement>;
  lot: Lot;
  material: Material;
  cost: ReturnType<typeof lotCost>;
  storage: StorageShares | null;
}>;

/** What made the discount: the terms the lot was bought under; a plain shelf price is the choice of the store (R10). */
function sourceOf(lot: Lot): SavingRow["source"] {
  if (lot.origin === "salvaged" || lot.origin === "left-over") return lot.origin;
  if (lot.terms === null || lot.terms === "shelf" || lot.terms === "paid" || lot.terms === "none-left")
    return lot.origin === "special-order" ? lot.origin : "choice-of-store";
  return lot.terms;
}

/** A refund or proceeds in home currency, at the rate of its day, rounded once; null: no rate. */
function atHome(amount: Money, on: LocalDate, { valuation }: ExposureFacts): Money | null {
  const rate = rateKept(valuation, amount.currency, valuation.homeCurrency, on);
  return rate.known ? roundToMinorUnit(inCurrency(amount, valuation.homeCurrency, rate)) : null;
}

type Part = Pick<Withdrawal | Holding, "quantity" | "charged" | "cost">;

/** What storing a quantity cost: of what has left by its event, of what is held by its requirement; null: no rate. */
function storageOf({ storage, facts }: Makings, eventId: string | null, requirementId: string | null) {
  if (storage === null) return null;
  const share = eventId === null ? storage.held.get(requirementId) : storage.left.get(eventId);
  return share ?? money(0, facts.valuation.homeCurrency);
}

/** What every row of a lot says, whatever became of the quantity. until: the day its carrying ends; eventId null: it is held. */
function common(
  makings: Makings,
  part: Part,
  requirementId: string | null,
  { until, eventId }: Readonly<{ until: LocalDate; eventId: string | null }>,
) {
  const { facts, lot, cost, requirements } = makings;
  const whole = cost.known
    ? carryingCost(cost.payments, facts.moneyRates, until, facts.valuation.homeCurrency)
    : null;
  const interest = carryingShare(lot, part.charged, whole);
  const carrying = carryingOf(interest, storageOf(makings, eventId, requirementId));
  return {
    lotId: lot.id,
    materialId: lot.materialId,
    requirementId,
    projectId: requirementId === null ? null : (requirements.get(requirementId)?.projectId ?? null),
    quantity: part.quantity,
    acquiredOn: lot.orderedOn,
    paid: cost.known ? part.cost : null,
    carrying,
    source: sourceOf(lot),
    beforeCarrying: interest === null || carrying === null,
    missing: false,
  };
}

/** A row of what was drawn for a requirement on a day, or is held for it and marked on a day. */
function usedRow(
  makings: Makings,
  part: Part,
  requirementId: string,
  on: LocalDate,
  event: StockEvent | null,
): SavingRow {
  const { market, lot, material } = makings;
  const shared = common(makings, part, requirementId, { until: on, eventId: event?.id ?? null });
  const bought = market.goingPrice(material, lot.orderedOn);
  const now = market.goingPrice(material, on);
  const goingAtAcquisition = goingValue(lot, part.quantity, bought);
  const goingAtDraw = goingValue(lot, part.quantity, now);
  const parts = savingParts({ ...shared, goingAtAcquisition, goingAtDraw });
  const requirement = makings.requirements.get(requirementId);
  const best = requirement === undefined ? null : market.bestValue(lot, part.quantity, requirement, on);
  return {
    ...shared,
    ...parts,
    eventId: event?.id ?? null,
    kind: event === null ? "held" : "drawn",
    state: parts.saving === null ? "not-known" : event === null ? "unrealised" : "realised",
    on: event?.on ?? null,
    goingAtAcquisition,
    goingAtDraw,
    interpolated: [bought, now].some((going) => going.known && going.kind !== "fresh"),
    received: null,
    strictSaving: shared.paid === null ? null : stockSaving(best, shared.paid, shared.carrying),
  };
}

const DISPOSALS: Readonly<Partial<Record<StockEvent["kind"], SavingKind>>> = {
  returned: "returned",
  sold: "sold",
  "written-off": "written-off",
  missing: "written-off",
};

/** A row of what left otherwise. Nothing was replaced on the market, so the strict figure is the saving itself. */
function disposalRow(makings: Makings, { event, ...part }: Withdrawal, kind: SavingKind): SavingRow {
  const shared = common(makings, part, event.requirementId, { until: event.on, eventId: event.id });
  const nothing = money(0, makings.facts.valuation.homeCurrency);
  const received = event.amount === null ? nothing : atHome(event.amount, event.on, makings.facts);
  const saving = disposalSaving(received, shared.paid, shared.carrying);
  return {
    ...shared,
    eventId: event.id,
    kind,
    state: saving === null ? "not-known" : "realised",
    on: event.on,
    goingAtAcquisition: null,
    goingAtDraw: null,
    interpolated: false,
    received: event.amount === null ? null : received,
    discount: null,
    timing: null,
    saving,
    strictSaving: saving,
    missing: event.kind === "missing",
  };
}

/**
 * Every row of a lot as of a day: one for each withdrawal that makes a saving, in the order they happened, then one for
 * each requirement it is still held for. A draw for no requirement and free stock make none; what is missed at a count is
 * a loss like a write-off. Units: home currency. Rounds: the row's amounts once each. Source: rules.md R9, R10.
 */
export function lotRows(
  day: LocalDate,
  lot: Lot,
  events: readonly StockEvent[],
  facts: ExposureFacts,
  market: MarketOfDays,
  requirements: ReadonlyMap<string, Requirement>,
): SavingRow[] {
  const material = materialOf(facts, lot.materialId);
  const cost = lotCost(lot, material, facts.valuation, day);
  const nothing = money(0, facts.valuation.homeCurrency);
  const account = lotAccount(lot, cost.known ? cost.cost : nothing, events, day);
  const { homeCurrency } = facts.valuation;
  const storage = storageShares(lot, events, account, day, homeCurrency, (amount, on) =>
    atHome(amount, on, facts),
  );
  const makings: Makings = { day, facts, market, requirements, lot, material, cost, storage };
  const gone = account.withdrawals.flatMap((withdrawal): SavingRow[] => {
    const { event } = withdrawal;
    const disposal = DISPOSALS[event.kind];
    if (disposal !== undefined) return [disposalRow(makings, withdrawal, disposal)];
    return event.requirementId === null
      ? []
      : [usedRow(makings, withdrawal, event.requirementId, event.on, event)];
  });
  const held = account.holdings.flatMap((holding): SavingRow[] =>
    holding.requirementId === null ? [] : [usedRow(makings, holding, holding.requirementId, day, null)],
  );
  return [...gone, ...held];
}
