import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { SnapshotMaterial, SnapshotStore } from "../../lib/show/aisle-snapshot.ts";
import { DATABASE } from "./flush.mjs";

export type RowKind =
  | "material"
  | "catalogued"
  | "store"
  | "price"
  | "correction"
  | "take-back"
  | "bought"
  | "draw";

export type RowError = Readonly<{ path: string; code: string; message: string }>;

/** One entry as it stands on the phone. said: what is sent, beside id and kind. */
export type Row = Readonly<{
  id: string;
  /** Empty before the phone ever reached its server: the first one it reaches is meant. */
  workspaceId: string;
  kind: RowKind;
  said: Readonly<Record<string, unknown>>;
  /** The phone's clock when the button was pressed, milliseconds. */
  at: number;
  state: "queued" | "rejected";
  /** It may have arrived: it can no longer simply be taken out. */
  sentOnce?: boolean;
  errors?: readonly RowError[];
  /** Ids of rows it rests on: while one of them is refused, this one waits. */
  restsOn?: readonly string[];
  /** What its material is called, for when the material is no longer among those the phone knows. */
  named?: string;
  /** A material or store made on the phone, as the form shows it until the server knows it. */
  made?: SnapshotMaterial | SnapshotStore;
}>;
export type AcknowledgedRow = Row & Readonly<{ acknowledgedAt: number }>;

export interface LogSchema extends DBSchema {
  outbox: { key: string; value: Row };
  acknowledged: { key: string; value: AcknowledgedRow };
  kept: { key: string; value: unknown };
}
export type LogDatabase = IDBPDatabase<LogSchema>;

/** Grows when a store is added; a page or worker of an older build then closes and the newer one goes on with the same rows. */
const VERSION = 1;

let opened: Promise<LogDatabase> | null = null;

/** The phone's database, opened once per page. */
export function logDatabase(): Promise<LogDatabase> {
  opened ??= openDB<LogSchema>(DATABASE, VERSION, {
    upgrade(database) {
      database.createObjectStore("outbox", { keyPath: "id" });
      database.createObjectStore("acknowledged", { keyPath: "id" });
      database.createObjectStore("kept");
    },
    blocking: forget,
    terminated: forget,
  }).catch((error: unknown) => {
    opened = null;
    throw error;
  });
  return opened;
}

function forget(): void {
  void opened?.then((database) => database.close());
  opened = null;
}
