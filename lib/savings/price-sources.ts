import type { LocalDate } from "../calendar/local-date.ts";
import { materialOf } from "../exposure/exposure-facts.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { Observation } from "../prices/observation.ts";
import type { MarketOfDays } from "./market-of-days.ts";
import { savingTotals } from "./saving-totals.ts";
import type { SavingsFacts } from "./savings.ts";
import type { SavingRow } from "./savings-figures.ts";

/** A shelf price that going prices rest on, as seen. rows: how many rows it is behind. */
export type PriceSource = Readonly<{
  observationId: string;
  materialId: string;
  storeId: string;
  seenOn: LocalDate;
  amount: Money | null;
  per: Observation["per"];
  taxIncluded: boolean;
  rows: number;
}>;

/**
 * The shelf prices behind the going prices of rows, at acquisition and at use, oldest first. day: the one held rows are
 * marked on. Rounds: never. @throws {RangeError} when a material is not among the facts. Source: rules.md R7.
 */
export function priceSources(
  rows: readonly SavingRow[],
  day: LocalDate,
  facts: SavingsFacts,
  market: MarketOfDays,
): PriceSource[] {
  const used = new Map<string, { seen: Observation; rows: number }>();
  for (const row of rows) {
    if (row.kind !== "drawn" && row.kind !== "held") continue;
    const material = materialOf(facts, row.materialId);
    const behind = new Set<Observation>();
    for (const on of [row.acquiredOn, row.on ?? day])
      for (const { before, after } of market.sourcedGoingPrice(material, on).sources) {
        behind.add(before.observation);
        if (after !== null) behind.add(after.observation);
      }
    for (const seen of behind) {
      const known = used.get(seen.id);
      if (known) known.rows += 1;
      else used.set(seen.id, { seen, rows: 1 });
    }
  }
  return [...used.values()]
    .map(({ seen, rows: count }) => ({
      observationId: seen.id,
      materialId: seen.materialId,
      storeId: seen.storeId,
      seenOn: seen.seenOn,
      amount: seen.amount,
      per: seen.per,
      taxIncluded: seen.taxIncluded,
      rows: count,
    }))
    .sort((a, b) =>
      a.seenOn < b.seenOn ? -1 : a.seenOn > b.seenOn ? 1 : a.observationId < b.observationId ? -1 : 1,
    );
}

/**
 * How firm a report's figures are. interpolated: rows with a going price that is no fresh sighting (drawn between two, or
 * an older one), and what of the saving rests on them. Units: the rows' currency. Rounds: never. Source: rules.md R7, R10.
 */
export type Firmness = Readonly<{
  rows: number;
  notKnown: number;
  notSplit: number;
  strictNotKnown: number;
  beforeCarrying: number;
  interpolated: number;
  onInterpolated: Money;
}>;

/** Counts of what is not known or not firm among rows. Rounds: never. */
export function firmness(rows: readonly SavingRow[], currency: CurrencyCode): Firmness {
  const soft = rows.filter((row) => row.interpolated && row.saving !== null);
  const totals = savingTotals(rows, currency);
  const isUsed = ({ kind }: SavingRow) => kind === "drawn" || kind === "held";
  return {
    rows: rows.length,
    notKnown: totals.notKnown,
    notSplit: rows.filter((row) => isUsed(row) && row.saving !== null && row.discount === null).length,
    strictNotKnown: totals.strictNotKnown,
    beforeCarrying: rows.filter((row) => row.beforeCarrying).length,
    interpolated: soft.length,
    onInterpolated: savingTotals(soft, currency).saving,
  };
}
