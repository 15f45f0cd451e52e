import "server-only";
import type { SalvageDetail } from "../stock/salvage.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { type Columns, currencyOf, manyRows, storedDecimal } from "./rows.ts";

type SalvageRow = Readonly<{
  lot_id: string;
  reclaimed_from: string | null;
  project_id: string | null;
  hours: string;
  hourly_rate: string;
  hauling: string;
  purchase_price: string;
  currency: string;
  tally: readonly Readonly<{ pieces: string; length: string | null }>[];
}>;

const SALVAGE: Columns<SalvageRow> = {
  lot_id: "s.lot_id",
  reclaimed_from: "s.reclaimed_from",
  project_id: "s.project_id",
  hours: "s.hours::text",
  hourly_rate: "s.hourly_rate::text",
  hauling: "s.hauling::text",
  purchase_price: "s.purchase_price::text",
  currency: "l.paid_currency",
  tally: "s.tally",
};

/** What lots were counted in as, of those that meet a condition on l (lot) and s (salvage). */
export async function salvagesWithin(tx: Tx, only: Prisma.Sql): Promise<SalvageDetail[]> {
  const found = await manyRows<SalvageRow>(
    tx,
    SALVAGE,
    Prisma.sql`FROM salvage s JOIN lot l ON l.workspace_id = s.workspace_id AND l.id = s.lot_id WHERE ${only}
      ORDER BY l.ordered_on DESC, l.sequence DESC`,
  );
  return found.map((stored) => ({
    lotId: stored.lot_id,
    reclaimedFrom: stored.reclaimed_from,
    projectId: stored.project_id,
    hours: storedDecimal(stored.hours),
    hourlyRate: storedDecimal(stored.hourly_rate),
    hauling: storedDecimal(stored.hauling),
    purchasePrice: storedDecimal(stored.purchase_price),
    currency: currencyOf(stored.currency),
    tally: stored.tally.map(({ pieces, length }) => ({ pieces: storedDecimal(pieces), length })),
  }));
}

/** What a lot was counted in as; null: it is no salvage, or was recorded as any other lot. */
export async function salvageWithin(tx: Tx, lotId: string): Promise<SalvageDetail | null> {
  return (await salvagesWithin(tx, Prisma.sql`s.lot_id = ${lotId}::uuid`))[0] ?? null;
}
