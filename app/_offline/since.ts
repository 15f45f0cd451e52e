import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, ZERO } from "../../lib/decimal.ts";
import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { CurrencyCode } from "../../lib/money/currencies.ts";
import type { Observation, Terms } from "../../lib/prices/observation.ts";
import { type PlainSeen, seenOfPlain } from "../../lib/show/aisle-seen.ts";
import type { AisleSnapshot, SnapshotMaterial, SnapshotStore } from "../../lib/show/aisle-snapshot.ts";
import type { Since } from "../../lib/show/aisle-verdict.ts";
import type { Row } from "./log-database.ts";
import type { Rows } from "./outbox.ts";

/** A price as it is sent: the entry of an observation, amounts as text. */
export type PriceSent = Readonly<{
  materialId: string;
  storeId: string;
  seenOn: LocalDate;
  terms: Terms;
  amount?: string;
  currency?: CurrencyCode;
  per?: Readonly<{ quantity: string; unit: PurchaseUnit }>;
  taxIncluded?: boolean;
  minQuantity?: string;
  maxQuantity?: string;
  packSize?: string;
  from?: LocalDate;
  until?: LocalDate;
  fees?: PlainSeen["fees"];
}>;

/** What a price's row says. */
export function priceSent(row: Row): PriceSent {
  return row.said.entry as PriceSent;
}

/** A price's row as the core knows it. */
export function seenOfRow(row: Row): Observation {
  const sent = priceSent(row);
  const plain: PlainSeen = {
    id: row.id,
    storeId: sent.storeId,
    on: sent.seenOn,
    terms: sent.terms,
    amount: sent.amount,
    currency: sent.currency,
    per: sent.per?.quantity,
    unit: sent.per?.unit ?? "each",
    taxIncluded: sent.taxIncluded || undefined,
    min: sent.minQuantity,
    max: sent.maxQuantity,
    pack: sent.packSize,
    from: sent.from,
    until: sent.until,
    fees: sent.fees,
  };
  return seenOfPlain(plain, sent.materialId);
}

/** Rows that count beside a snapshot: what waits, and what was acknowledged after it was taken. A refused row counts not. */
export function rowsSince({ outbox, acknowledged }: Rows, snapshot: AisleSnapshot): Row[] {
  const taken = Date.parse(snapshot.takenAt);
  const own = (row: Row) => row.workspaceId === snapshot.workspace.id || row.workspaceId === "";
  return [
    ...acknowledged.filter((row) => own(row) && !(row.acknowledgedAt < taken)),
    ...outbox.filter((row) => own(row) && row.state === "queued"),
  ].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What happened on the phone since the snapshot, as the verdict takes it. */
export function sinceOf(rows: readonly Row[]): Since {
  const gone = new Map<string, boolean>();
  const bought = new Map<string, Decimal>();
  for (const { kind, said } of rows) {
    if (kind === "take-back") gone.set(String(said.observationId), said.taken === true);
    if (kind === "bought" && typeof said.requirementId === "string") {
      const quantity = (said.entry as Readonly<{ quantity: string }>).quantity;
      bought.set(said.requirementId, (bought.get(said.requirementId) ?? ZERO).plus(decimal(quantity)));
    }
  }
  return {
    seen: rows.filter(({ kind }) => kind === "price").map(seenOfRow),
    gone: new Set([...gone].filter(([, taken]) => taken).map(([id]) => id)),
    bought,
  };
}

/** The snapshot with materials and stores made on the phone, what was logged last first. */
export function withMade(snapshot: AisleSnapshot, rows: readonly Row[]): AisleSnapshot {
  const lastLogged = new Map<string, number>();
  for (const row of rows) if (row.kind === "price") lastLogged.set(priceSent(row).materialId, row.at);
  const materials = new Map(snapshot.materials.map((material) => [material.id, material]));
  const stores = new Map(snapshot.stores.map((store) => [store.id, store]));
  for (const { kind, made } of rows) {
    if (made === undefined) continue;
    if (kind === "store") stores.set(made.id, stores.get(made.id) ?? (made as SnapshotStore));
    else materials.set(made.id, materials.get(made.id) ?? (made as SnapshotMaterial));
  }
  const rank = (material: SnapshotMaterial) => lastLogged.get(material.id) ?? 0;
  return {
    ...snapshot,
    materials: [...materials.values()].sort((a, b) => rank(b) - rank(a)),
    stores: [...stores.values()],
  };
}
