import "server-only";
import type { UnitCode } from "../measure/units.ts";
import type { Disposal } from "../projects/disposal.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { type Columns, currencyOf, decimalOrNull, manyRows, storedDay, storedDecimal } from "./rows.ts";

/** Waste gotten rid of, as it is kept; undoneAt says when it was undone. */
export type StoredDisposal = Disposal & Readonly<{ undoneAt: string | null }>;

type DisposalRow = Readonly<{
  id: string;
  project_id: string;
  kind: Disposal["kind"];
  on_day: string;
  fee_basis: Disposal["feeBasis"];
  fee: string;
  least: string | null;
  loads: string | null;
  hauling: string;
  currency: string;
  tax_included: boolean;
  tax_region: string | null;
  weight: string | null;
  weight_unit: UnitCode | null;
  material_id: string | null;
  quantity: string | null;
  note: string | null;
  undone_at: string | null;
}>;

const DISPOSAL: Columns<DisposalRow> = {
  id: "d.id",
  project_id: "d.project_id",
  kind: "d.kind",
  on_day: "d.on_day",
  fee_basis: "d.fee_basis",
  fee: "d.fee::text",
  least: "d.least::text",
  loads: "d.loads::text",
  hauling: "d.hauling::text",
  currency: "d.currency",
  tax_included: "d.tax_included",
  tax_region: "d.tax_region",
  weight: "d.weight::text",
  weight_unit: "d.weight_unit",
  material_id: "d.material_id",
  quantity: "d.quantity::text",
  note: "d.note",
  undone_at: "d.undone_at",
};

function disposalOfRow(stored: DisposalRow): StoredDisposal {
  const weight = decimalOrNull(stored.weight);
  return {
    id: stored.id,
    projectId: stored.project_id,
    kind: stored.kind,
    on: storedDay(stored.on_day),
    feeBasis: stored.fee_basis,
    fee: storedDecimal(stored.fee),
    least: decimalOrNull(stored.least),
    loads: decimalOrNull(stored.loads),
    hauling: storedDecimal(stored.hauling),
    currency: currencyOf(stored.currency),
    taxIncluded: stored.tax_included,
    taxRegion: stored.tax_region,
    weight:
      weight === null || stored.weight_unit === null ? null : { value: weight, unit: stored.weight_unit },
    materialId: stored.material_id,
    quantity: decimalOrNull(stored.quantity),
    note: stored.note,
    undoneAt: stored.undone_at,
  };
}

/** What was gotten rid of, of those that meet a condition on d, the newest first. */
export async function disposalsWithin(tx: Tx, only: Prisma.Sql): Promise<StoredDisposal[]> {
  const from = Prisma.sql`FROM disposal d WHERE ${only} ORDER BY d.on_day DESC, d.sequence DESC`;
  return (await manyRows<DisposalRow>(tx, DISPOSAL, from)).map(disposalOfRow);
}

/** One of them, an undone one too. */
export async function disposalWithin(tx: Tx, id: string): Promise<StoredDisposal | null> {
  return (await disposalsWithin(tx, Prisma.sql`d.id = ${id}::uuid`))[0] ?? null;
}
