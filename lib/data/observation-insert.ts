import "server-only";
import type { Fault } from "../fault.ts";
import type { Observation } from "../prices/observation.ts";
import type { ObservationEntry } from "../prices/observation-entry.ts";
import type { Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import { entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { observationFaults, surroundingsOf } from "./observation-checks.ts";
import { storedFee } from "./observation-rows.ts";
import { digits, digitsOrNull, rows } from "./rows.ts";

/** An entry under the id its sender made for it. */
export type ObservationSent = Readonly<{ id: string; entry: ObservationEntry }>;

/** What became of each, in the order sent. */
export type Placed =
  | Readonly<{ id: string; now: "added"; value: Observation }>
  | Readonly<{ id: string; now: "repeated" | "conflict" }>
  | Readonly<{ id: string; now: "faults"; faults: readonly Fault[] }>;

async function insert(tx: Tx, seen: readonly (Observation & { hash: string })[]): Promise<void> {
  if (seen.length === 0) return;
  const column = (read: (one: Observation & { hash: string }) => string | null) =>
    Prisma.sql`${seen.map(read)}::text[]`;
  await tx.$executeRaw`INSERT INTO observation (id, material_id, store_id, seen_on, terms, amount, currency, per_quantity,
      per_unit, tax_included, tax_region, exempt_from, min_quantity, max_quantity, pack_size, from_day, until_day, fees,
      note, entry_hash)
    SELECT id::uuid, material_id::uuid, store_id::uuid, seen_on::date, terms, amount::numeric, currency,
      per_quantity::numeric, per_unit, tax_included::boolean, tax_region,
      ARRAY(SELECT jsonb_array_elements_text(exempt_from::jsonb)), min_quantity::numeric, max_quantity::numeric,
      pack_size::numeric, from_day::date, until_day::date, fees::jsonb, note, entry_hash
    FROM unnest(
      ${column((one) => one.id)}, ${column((one) => one.materialId)}, ${column((one) => one.storeId)},
      ${column((one) => one.seenOn)}, ${column((one) => one.terms)},
      ${column((one) => digitsOrNull(one.amount?.amount ?? null))}, ${column((one) => one.amount?.currency ?? null)},
      ${column((one) => digits(one.per.quantity))}, ${column((one) => one.per.unit)},
      ${column((one) => String(one.taxIncluded))}, ${column((one) => one.taxRegion)},
      ${column((one) => JSON.stringify(one.exemptFrom))}, ${column((one) => digitsOrNull(one.minQuantity))},
      ${column((one) => digitsOrNull(one.maxQuantity))}, ${column((one) => digitsOrNull(one.packSize))},
      ${column((one) => one.from)}, ${column((one) => one.until)},
      ${column((one) => JSON.stringify(one.fees.map(storedFee)))}, ${column((one) => one.note)},
      ${column((one) => one.hash)}
    ) WITH ORDINALITY AS g(id, material_id, store_id, seen_on, terms, amount, currency, per_quantity, per_unit,
      tax_included, tax_region, exempt_from, min_quantity, max_quantity, pack_size, from_day, until_day, fees, note,
      entry_hash, place)
    ORDER BY place`;
}

/**
 * Stores what can be stored of a list of sightings, in one statement; each stands alone. A day ahead is stored as today.
 * An id seen before, deleted or earlier in the list, is repeated or a conflict by its first content (R11).
 */
export async function placeObservations(tx: Tx, sent: readonly ObservationSent[]): Promise<Placed[]> {
  const ids = sent.map(({ id }) => id);
  const stored = await rows<{ id: string; entry_hash: string }>(
    tx,
    Prisma.sql`SELECT id, entry_hash FROM observation WHERE id = ANY(${ids}::text[]::uuid[])`,
  );
  const firsts = new Map(stored.map(({ id, entry_hash }) => [id, entry_hash]));
  const around = await surroundingsOf(
    tx,
    sent.map(({ entry }) => entry),
  );
  const added: (Observation & { hash: string })[] = [];
  const placed = sent.map(({ id, entry }): Placed => {
    const hash = entryHash(entry);
    const first = firsts.get(id);
    if (first !== undefined) return { id, now: first === hash ? "repeated" : "conflict" };
    const faults = observationFaults(entry, around);
    if (faults.length > 0) return { id, now: "faults", faults };
    const value = { id, ...entry, seenOn: countedDay(entry.seenOn, around.today) };
    firsts.set(id, hash);
    added.push({ ...value, hash });
    return { id, now: "added", value };
  });
  await insert(tx, added);
  return placed;
}
