import { type AisleSnapshot, SNAPSHOT_VERSION } from "../../lib/show/aisle-snapshot.ts";

import { logDatabase, type Row } from "./log-database.ts";
import { adoptRows, offerAgain } from "./outbox.ts";

const PATIENCE = 15_000;
const CURRENT = "current-workspace";
const keyOf = (workspaceId: string) => `snapshot ${workspaceId}`;

/** The snapshot of the workspace last looked at, if this build can read it. */
export async function keptSnapshot(): Promise<AisleSnapshot | null> {
  const database = await logDatabase();
  const current = await database.get("kept", CURRENT);
  const text = typeof current === "string" ? await database.get("kept", keyOf(current)) : undefined;
  if (typeof text !== "string") return null;
  const snapshot = JSON.parse(text) as AisleSnapshot;
  return snapshot.version === SNAPSHOT_VERSION ? snapshot : null;
}

/** The newest price, lot, material or store the server acknowledged for this workspace: it must still be there. */
async function lastAcknowledged(): Promise<Row | undefined> {
  const database = await logDatabase();
  const current = await database.get("kept", CURRENT);
  return (await database.getAll("acknowledged"))
    .filter(({ workspaceId }) => workspaceId === current)
    .filter(({ kind }) => !["correction", "take-back", "draw"].includes(kind))
    .sort((a, b) => b.acknowledgedAt - a.acknowledgedAt)[0];
}

/** A store named before the phone knew its workspace lies in the workspace's own region, and counts in its currency. */
function completed(row: Row, { taxRegion, homeCurrency }: AisleSnapshot): Row {
  const entry = row.said.entry;
  if (typeof entry !== "object" || entry === null) return row;
  if (row.kind === "store")
    return { ...row, said: { entry: { ...entry, taxRegion, currency: homeCurrency } } };
  const priced = row.kind === "price" && "amount" in entry;
  return priced ? { ...row, said: { entry: { ...entry, currency: homeCurrency } } } : row;
}

/** Why there is no new snapshot: no server, one of another build, or one that asks to sign in first. */
export type Unreached = "away" | "signed-out";
type Answer = Readonly<{ restored: boolean; snapshot: AisleSnapshot }>;

async function asked(row: Row | undefined): Promise<Answer | Unreached> {
  const query = row === undefined ? "" : `?acknowledged=${row.id}`;
  try {
    const response = await fetch(`/api/v1/phone/snapshot${query}`, { signal: AbortSignal.timeout(PATIENCE) });
    if (response.status === 401 || response.status === 403) return "signed-out";
    if (!response.ok || response.redirected) return "away";
    return (await response.json()) as Answer;
  } catch {
    return "away";
  }
}

/** Fetches a new snapshot and keeps it, or says why there is none. */
export async function freshSnapshot(): Promise<AisleSnapshot | Unreached> {
  const last = await lastAcknowledged();
  const answer = await asked(last);
  if (typeof answer === "string") return answer;
  if (answer.snapshot?.version !== SNAPSHOT_VERSION) return "away";
  const { snapshot, restored } = answer;
  const { id } = snapshot.workspace;
  const database = await logDatabase();
  const transaction = database.transaction("kept", "readwrite");
  await transaction.store.put(JSON.stringify(snapshot), keyOf(id));
  await transaction.store.put(id, CURRENT);
  await transaction.done;
  await adoptRows(id, (row) => completed(row, snapshot));
  if (restored && last?.workspaceId === id) await offerAgain(id);
  return snapshot;
}

/** A small thing this phone remembers (the last store, what was ticked off). */
export async function remembered<T>(key: string, otherwise: T): Promise<T> {
  return ((await (await logDatabase()).get("kept", key)) as T | undefined) ?? otherwise;
}

/** Remembers it. */
export async function remember(key: string, value: unknown): Promise<void> {
  await (await logDatabase()).put("kept", value, key);
}
