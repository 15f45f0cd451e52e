import type * as z from "zod";
import { fields, flag, id, name } from "../../lib/entry-fields.ts";
import { materialEntry } from "../../lib/materials/material-entry.ts";
import { observationCorrection, observationEntry } from "../../lib/prices/observation-entry.ts";
import { storeEntry } from "../../lib/prices/store-entry.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";

const lotId = id();
const observationId = id();

/**
 * What a phone may send, by kind, each with its id beside it. A material or a store first, then prices of it, then what rests
 * on prices: they are written in this order, whatever order they arrive in. none-left is a price of these terms; a price taken
 * back (taken: true) and brought back again is the same kind, so that the last one said counts.
 */
export const ENTRY_KINDS = {
  material: fields({ entry: materialEntry }),
  catalogued: fields({ key: name() }),
  store: fields({ entry: storeEntry }),
  price: fields({ entry: observationEntry }),
  correction: fields({ observationId, patch: observationCorrection }),
  "take-back": fields({ observationId, taken: flag() }),
  bought: fields({ entry: lotEntry, requirementId: id().nullable().default(null) }),
  draw: fields({ lotId, entry: stockEventEntry.refine(({ kind }) => kind === "drawn", "unknown-choice") }),
} as const;
export type EntryKind = keyof typeof ENTRY_KINDS;

/** The kinds in the order they are written. */
export const KINDS_IN_ORDER = Object.keys(ENTRY_KINDS) as EntryKind[];

export type EntryOf<K extends EntryKind> = z.output<(typeof ENTRY_KINDS)[K]>;
