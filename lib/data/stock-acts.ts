import "server-only";
import type { Written } from "../fault.ts";
import { inWorkspace, type Scope } from "./client.ts";
import { actWithin, type StoredAct } from "./stock-act-rows.ts";
import { setActUndone } from "./stock-act-undo.ts";

export type { StoredAct } from "./stock-act-rows.ts";

/** What was done as one, an undone one too (undoneAt says so); null: not there. */
export function stockAct(scope: Scope, id: string): Promise<StoredAct | null> {
  return inWorkspace(scope, (tx) => actWithin(tx, id));
}

/** Takes an act back, all of it. Faults: event-in-the-way, the later event that needs it; held-by-an-act. */
export function undoAct(scope: Scope, id: string): Promise<Written<StoredAct>> {
  return inWorkspace(scope, (tx) => setActUndone(tx, id, true));
}

/** Brings an undone act back, all of it. Faults: those of `undoAct`. */
export function redoAct(scope: Scope, id: string): Promise<Written<StoredAct>> {
  return inWorkspace(scope, (tx) => setActUndone(tx, id, false));
}
