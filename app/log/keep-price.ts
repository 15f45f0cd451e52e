import { v7 } from "uuid";
import type { Fault } from "../../lib/fault.ts";
import type { PlainSeen } from "../../lib/show/aisle-seen.ts";
import type { SnapshotMaterial } from "../../lib/show/aisle-snapshot.ts";
import type { Row } from "../_offline/log-database.ts";
import { keepRows } from "../_offline/outbox.ts";
import { entryOfTyped, faultsOfTyped, type PriceEntrySent, type TypedPrice } from "./check-price.ts";
import { rowOfPrice, stillSo } from "./rows-of-price.ts";
import type { Aisle } from "./use-aisle.client.ts";

/** What became of a price that was to be kept. doubt: nothing was kept yet, it is asked first. full: the phone keeps nothing. */
export type Became =
  | Readonly<{ is: "faults"; faults: readonly Fault[] }>
  | Readonly<{ is: "doubt"; off: "tenth" | "tenfold" }>
  | Readonly<{ is: "full" }>
  | Readonly<{ is: "kept"; row: Row }>;

type Pressed = Readonly<{
  typed: TypedPrice;
  /** The amount was asked about and stands. */
  sure: boolean;
  /** The last shelf price, said to stand beside this one. */
  still: PlainSeen | null;
  plain: SnapshotMaterial | undefined;
  aisle: Aisle;
  chargeName: string;
}>;

/** Whether a price looks ten times off; where that cannot be worked out now, it is kept unasked. */
async function doubtAbout(entry: PriceEntrySent, plain: SnapshotMaterial, aisle: Aisle) {
  try {
    const { doubtOf } = await import("./typed-verdict.ts");
    return doubtOf(entry, plain, aisle);
  } catch {
    return null;
  }
}

/** Keeps a typed price on this phone, once: its id is made here. Nothing is kept while something has to be put right or asked. */
export async function keepPrice({ typed, sure, still, plain, aisle, chargeName }: Pressed): Promise<Became> {
  const faults = faultsOfTyped(typed, aisle.today);
  if (faults.length > 0) return { is: "faults", faults };
  const entry = entryOfTyped(typed, chargeName);
  const off = sure || plain === undefined ? null : await doubtAbout(entry, plain, aisle);
  if (off !== null) return { is: "doubt", off };
  const made = aisle.rows.outbox.filter(({ id }) => id === typed.materialId || id === typed.storeId);
  const workspaceId = aisle.snapshot.workspace.id;
  const given = {
    newId: v7,
    at: Date.now(),
    workspaceId,
    restsOn: made.map(({ id }) => id),
    named: plain?.name,
  };
  const before = still === null ? [] : [rowOfPrice(stillSo(still, entry), given)];
  const row = rowOfPrice(entry, given);
  try {
    await keepRows([...before, row]);
    return { is: "kept", row };
  } catch {
    return { is: "full" };
  }
}
