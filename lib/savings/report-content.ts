import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import { rateKept } from "../prices/rate-kept.ts";
import { inCurrency } from "../rates/rate-of-day.ts";
import type { MoneyRate } from "../stock/carrying.ts";
import type { Lot } from "../stock/lot.ts";
import { type BookCosts, bookCosts } from "./book-costs.ts";
import { marketOfDays } from "./market-of-days.ts";
import { type PriceSource, priceSources } from "./price-sources.ts";
import { type SavingsFacts, savings } from "./savings.ts";
import type { SavingRow } from "./savings-figures.ts";
import { savingsInCurrency } from "./savings-in-currency.ts";
import { type HeldOn, heldOn, marksOfLots } from "./unrealised-through-time.ts";

/** What a report is asked for; null: all. currency null: the home currency. */
export type ReportAsked = Readonly<{
  from: LocalDate | null;
  until: LocalDate | null;
  projectId: string | null;
  materialId: string | null;
  currency: CurrencyCode | null;
  /** Held rows are marked on it, and nothing that came later is known. */
  day: LocalDate;
}>;

/** The one rate a report in another currency is converted at: 1 home = rate. */
export type ReportRate = Readonly<{ rate: Decimal; on: LocalDate; source: string }>;

/** What a lot's receipt said. */
export type ReportLot = Readonly<
  Pick<Lot, "id" | "materialId" | "origin" | "storeId" | "orderedOn" | "quantity"> & {
    paid: Money;
    taxIncluded: boolean;
  }
>;

/**
 * All a report of savings is drawn from, by itself: rows and marks in `currency`, the inputs they were reckoned from, and
 * what things are called. A saved report keeps exactly this.
 */
export type ReportContent = Readonly<{
  asked: ReportAsked;
  homeCurrency: CurrencyCode;
  currency: CurrencyCode;
  /** null: in home currency. */
  rate: ReportRate | null;
  /** The currency asked for has no rate on the day, so the report stands in home currency. */
  noRateFor: CurrencyCode | null;
  rows: readonly SavingRow[];
  marks: readonly HeldOn[];
  sources: readonly PriceSource[];
  lots: readonly ReportLot[];
  moneyRates: readonly MoneyRate[];
  /** Stock by three cost formulas, home currency; none in the report of one project, whose stock is not apart. */
  books: readonly BookCosts[];
  /** Names of materials, stores and projects, and the unit of each material, by id. */
  names: Readonly<Record<string, string>>;
  units: Readonly<Record<string, PurchaseUnit>>;
}>;

const earlier = (a: LocalDate, b: LocalDate) => (a < b ? a : b);

function receiptOf({ id, materialId, origin, storeId, orderedOn, quantity, paid }: Lot): ReportLot {
  const { amount, currency, taxIncluded } = paid;
  return { id, materialId, origin, storeId, orderedOn, quantity, paid: money(amount, currency), taxIncluded };
}

function namesIn(facts: SavingsFacts, ids: ReadonlySet<string>): Record<string, string> {
  const things = [...facts.materials.values(), ...facts.valuation.stores.values(), ...facts.projects];
  return Object.fromEntries(things.filter(({ id }) => ids.has(id)).map(({ id, name }) => [id, name]));
}

/**
 * A report's content from the facts of its day: rows of the period, project and material, converted at one rate where
 * another currency is asked (see `savingsInCurrency`), and the unrealised saving through time.
 * Units: the asked currency. Rounds: as rows do; each mark once. @throws {RangeError} when a material is not among the facts.
 * Source: rules.md R2, R10, R11.
 */
export function reportContent(asked: ReportAsked, facts: SavingsFacts): ReportContent {
  const { from, until, projectId, materialId, day } = asked;
  const { valuation } = facts;
  const { homeCurrency } = valuation;
  const market = marketOfDays(day, facts);
  const own = savings(from, until, day, facts, market).rows.filter(
    (row) =>
      (projectId === null || row.projectId === projectId) &&
      (materialId === null || row.materialId === materialId),
  );
  const wanted = asked.currency ?? homeCurrency;
  const known = rateKept(valuation, homeCurrency, wanted, day);
  const rate = wanted !== homeCurrency && known.known ? known : null;
  const currency = rate === null ? homeCurrency : wanted;
  const first = own.map(({ acquiredOn }) => acquiredOn).reduce(earlier, day);
  const marks = marksOfLots(facts.lots, from, day).filter((on) => own.length > 0 && on >= first);
  const held = marks.map((on): HeldOn => {
    const mark = heldOn(on, facts, asked);
    if (rate === null) return mark;
    return { ...mark, unrealised: roundToMinorUnit(inCurrency(mark.unrealised, currency, rate)) };
  });
  const lotIds = new Set(own.map(({ lotId }) => lotId));
  const sources = priceSources(own, day, facts, market);
  const lots = facts.lots.filter(({ id }) => lotIds.has(id));
  const period = { from, until: until === null || until > day ? day : until };
  const books =
    projectId === null
      ? bookCosts(facts, period).filter((one) => materialId === null || one.materialId === materialId)
      : [];
  const ids = new Set<string | null>([
    ...own.flatMap((row) => [row.materialId, row.projectId]),
    ...lots.map(({ storeId }) => storeId),
    ...sources.map(({ storeId }) => storeId),
    ...books.map((one) => one.materialId),
    projectId,
    materialId,
  ]);
  const named = new Set([...ids].filter((id) => id !== null));
  return {
    asked,
    homeCurrency,
    currency,
    rate: rate === null ? null : { rate: rate.rate, on: rate.on, source: rate.source },
    noRateFor: wanted !== homeCurrency && rate === null ? wanted : null,
    rows: rate === null ? own : savingsInCurrency(own, currency, rate),
    marks: held,
    sources,
    lots: lots.map(receiptOf),
    moneyRates: facts.moneyRates,
    books,
    names: namesIn(facts, named),
    units: Object.fromEntries(
      [...facts.materials.values()]
        .filter(({ id }) => named.has(id))
        .map(({ id, purchaseUnit }) => [id, purchaseUnit]),
    ),
  };
}
