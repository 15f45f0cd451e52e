// Shared by the page (imported) and the service worker (written into it after the build). Plain JavaScript on purpose.
// Safe to run twice at once: the lock stops double sends, and the server knows every id, so that a repeat does no harm.

export const DATABASE = "dunnage-log";
const ADDRESS = "/api/v1/phone/entries";
const AT_ONCE = 100;
const PATIENCE = 15_000;
const KEPT_FOR = 30 * 86_400_000;
/** What others rest on goes first; the server writes in the same order. */
const ORDER = ["material", "catalogued", "store", "price", "correction", "take-back", "bought", "draw"];

const answered = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

const finished = (transaction) =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onerror = () => reject(transaction.error);
    transaction.onabort = () => reject(transaction.error ?? new Error("the transaction was given up"));
  });

const strictly = (database, stores) => database.transaction(stores, "readwrite", { durability: "strict" });

/** The rows to send next: of one workspace, nothing that rests on a refused one. */
export function nextBatch(rows) {
  const refused = new Set(rows.filter((row) => row.state === "rejected").map((row) => row.id));
  const ready = rows
    .filter((row) => row.state === "queued" && row.workspaceId !== "")
    .filter((row) => !(row.restsOn ?? []).some((id) => refused.has(id)))
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind) || (a.id < b.id ? -1 : 1));
  return ready.filter((row) => row.workspaceId === ready[0].workspaceId).slice(0, AT_ONCE);
}

/** Marks rows as sent from now on: what was never sent can still be taken out. The answer: those that are still there. */
async function marked(database, batch) {
  const transaction = strictly(database, ["outbox"]);
  const store = transaction.objectStore("outbox");
  const there = [];
  for (const { id } of batch) {
    const row = await answered(store.get(id));
    if (row?.state !== "queued") continue;
    there.push(row);
    if (!row.sentOnce) store.put({ ...row, sentOnce: true });
  }
  await finished(transaction);
  return there;
}

/** Sends one batch. null: the workspace is gone. Throws for everything else but an answer of ours: then all is kept. */
async function sent(batch) {
  const response = await fetch(ADDRESS, {
    method: "POST",
    headers: { "content-type": "application/json" },
    signal: AbortSignal.timeout(PATIENCE),
    body: JSON.stringify({
      workspaceId: batch[0].workspaceId,
      entries: batch.map(({ id, kind, said }) => ({ id, kind, ...said })),
    }),
  });
  const type = response.headers.get("content-type") ?? "";
  if (response.status === 404 && type.startsWith("application/problem+json")) return null;
  if (!response.ok || response.redirected) throw new Error(`not accepted: ${response.status}`);
  const { accepted, rejected } = await response.json();
  if (!Array.isArray(accepted) || !Array.isArray(rejected)) throw new Error("not an answer of ours");
  const at = Date.parse(response.headers.get("date") ?? "");
  return { accepted, rejected, at: Number.isNaN(at) ? Date.now() : at };
}

/** Takes out only what the server named, and keeps it for a month beside; a refused row stays with its reason. */
async function settled(database, batch, { accepted, rejected, at }) {
  const transaction = strictly(database, ["outbox", "acknowledged"]);
  const [outbox, acknowledged] = [transaction.objectStore("outbox"), transaction.objectStore("acknowledged")];
  const rows = new Map(batch.map((row) => [row.id, row]));
  let named = 0;
  for (const id of accepted) {
    const row = rows.get(id);
    if (row === undefined) continue;
    named += 1;
    outbox.delete(id);
    acknowledged.put({ ...row, acknowledgedAt: at });
  }
  for (const { id, errors } of rejected) {
    const row = rows.get(id);
    if (row === undefined) continue;
    named += 1;
    outbox.put({ ...row, state: "rejected", errors });
  }
  for (const row of await answered(acknowledged.getAll()))
    if (row.acknowledgedAt < at - KEPT_FOR) acknowledged.delete(row.id);
  await finished(transaction);
  if (named === 0) throw new Error("the server named none of what it was sent");
}

const GONE = [{ path: "workspaceId", code: "not-there", message: "is no longer there" }];

/** Sends everything that waits, a hundred at a time, one sender at a time. Throws when it cannot; what waits stays. */
export function flush(database, changed = () => {}) {
  const work = async () => {
    for (;;) {
      const rows = await answered(database.transaction("outbox").objectStore("outbox").getAll());
      const next = nextBatch(rows);
      if (next.length === 0) return;
      const batch = await marked(database, next);
      if (batch.length === 0) continue;
      const answer = await sent(batch);
      const gone = batch.map(({ id }) => ({ id, errors: GONE }));
      await settled(database, batch, answer ?? { accepted: [], rejected: gone, at: 0 });
      changed();
    }
  };
  return navigator.locks ? navigator.locks.request("dunnage-outbox", work) : work();
}
