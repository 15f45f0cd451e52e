import { type IDBPTransaction, unwrap } from "idb";
import { DATABASE, flush } from "./flush.mjs";
import { type AcknowledgedRow, type LogSchema, logDatabase, type Row } from "./log-database.ts";

const CHANGED = "outbox-changed";
type Strict = IDBPTransaction<LogSchema, ["outbox", "acknowledged"], "readwrite">;
type WithSync = ServiceWorkerRegistration & { sync?: { register: (tag: string) => Promise<void> } };

/** Tells this page and the other tabs. */
function changed(): void {
  dispatchEvent(new Event(CHANGED));
  const others = new BroadcastChannel(DATABASE);
  others.postMessage("changed");
  others.close();
}

/** Calls back when rows changed, here, in another tab or in the worker. The answer ends it. */
export function onOutboxChange(call: () => void): () => void {
  const others = new BroadcastChannel(DATABASE);
  others.addEventListener("message", call);
  addEventListener(CHANGED, call);
  return () => {
    others.close();
    removeEventListener(CHANGED, call);
  };
}

/** One transaction that is on the disk when it is done: only then may a row be called kept. */
async function strictly<T>(work: (transaction: Strict) => Promise<T>): Promise<T> {
  const transaction: Strict = (await logDatabase()).transaction(["outbox", "acknowledged"], "readwrite", {
    durability: "strict",
  });
  const [answer] = await Promise.all([work(transaction), transaction.done]);
  changed();
  return answer;
}

/** Sends what waits, as far as it can now; what cannot be sent stays. */
export async function sendOutbox(): Promise<void> {
  try {
    await flush(unwrap(await logDatabase()), changed);
  } catch {
    // No server, no sign-in or no connection: everything is still there, and the next occasion tries again.
  }
}

/** Keeps new rows on this phone, all of them or none; then tries to send. Throws when the phone cannot keep them. */
export async function keepRows(rows: readonly Row[]): Promise<void> {
  await strictly(async (transaction) => {
    for (const row of rows) await transaction.objectStore("outbox").put(row);
  });
  void sendOutbox();
  void askForSync();
}

/** Where the browser can, it sends by itself when the network is back, with the page closed. */
async function askForSync(): Promise<void> {
  const registration: WithSync | undefined = await navigator.serviceWorker?.getRegistration();
  await registration?.sync?.register("outbox").catch(() => undefined);
}

/** Takes a row out that was never sent; false when it may have arrived. */
export function takeOut(id: string): Promise<boolean> {
  return strictly(async (transaction) => {
    const row = await transaction.objectStore("outbox").get(id);
    if (row === undefined || (row.sentOnce && row.state === "queued")) return false;
    await transaction.objectStore("outbox").delete(id);
    return true;
  });
}

/** Puts a refused row right and sends it again; under a new id where the old one is taken by something else. */
export async function mendRow(
  id: string,
  mended: Readonly<{ id: string; said: Row["said"] }>,
): Promise<void> {
  await strictly(async (transaction) => {
    const row = await transaction.objectStore("outbox").get(id);
    if (row === undefined) return;
    await transaction.objectStore("outbox").delete(id);
    await transaction.objectStore("outbox").put({ ...row, ...mended, state: "queued", errors: undefined });
  });
  void sendOutbox();
}

/** Offers again everything acknowledged in the last month: the books were put back to an earlier state. */
export async function offerAgain(workspaceId: string): Promise<void> {
  await strictly(async (transaction) => {
    const rows = await transaction.objectStore("acknowledged").getAll();
    for (const { acknowledgedAt: _, ...row } of rows.filter((one) => one.workspaceId === workspaceId)) {
      await transaction.objectStore("outbox").put({ ...row, state: "queued" });
      await transaction.objectStore("acknowledged").delete(row.id);
    }
  });
  void sendOutbox();
}

/** Gives rows made before the phone ever reached a server the workspace it reached first. */
export function adoptRows(workspaceId: string, complete: (row: Row) => Row): Promise<void> {
  return strictly(async (transaction) => {
    for (const row of await transaction.objectStore("outbox").getAll())
      if (row.workspaceId === "")
        await transaction.objectStore("outbox").put({ ...complete(row), workspaceId });
  });
}

/** What is on this phone: what waits or was refused, and what the server has acknowledged. */
export type Rows = Readonly<{ outbox: readonly Row[]; acknowledged: readonly AcknowledgedRow[] }>;

/** All rows, the first one first. */
export async function allRows(): Promise<Rows> {
  const database = await logDatabase();
  const [outbox, acknowledged] = await Promise.all([
    database.getAll("outbox"),
    database.getAll("acknowledged"),
  ]);
  return { outbox, acknowledged };
}
