import type * as z from "zod";
import type { Scope } from "../../../../lib/data/client.ts";
import { addLot } from "../../../../lib/data/lots.ts";
import { addMaterial } from "../../../../lib/data/materials.ts";
import {
  addObservations,
  correctObservation,
  deleteObservation,
  undeleteObservation,
} from "../../../../lib/data/observations.ts";
import { addStockEvent } from "../../../../lib/data/stock-events.ts";
import { addStore } from "../../../../lib/data/stores.ts";
import type { Fault, Written } from "../../../../lib/fault.ts";
import { catalogued } from "../../../../lib/materials/catalogue/catalogue.ts";
import { entryOf } from "../../../../lib/materials/catalogue/entry.ts";
import { type EntryKind, type EntryOf, KINDS_IN_ORDER } from "../../../_offline/entry-kinds.ts";
import { type KindRead, readEntries } from "../../../_offline/read-entries.ts";
import { spoken } from "./fault-words.ts";
import type { faultShape } from "./problem.ts";
import { USED_ID } from "./used-id.ts";

type Came = Readonly<{ id: string; faults: readonly Fault[] | null }>;
type Answered = {
  accepted: string[];
  rejected: { id: string; errors: z.output<typeof faultShape>[] }[];
};

function cameOf<T>(id: string, written: Written<T>, at = "id"): Came {
  if (written.ok) return { id, faults: null };
  if (written.why === "faults") return { id, faults: written.faults };
  return { id, faults: written.why === "conflict" ? USED_ID : [{ path: at, code: "not-there" }] };
}

type OneByOne = {
  [K in Exclude<EntryKind, "price">]: (scope: Scope, id: string, said: EntryOf<K>) => Promise<Came>;
};

const ONE_BY_ONE: OneByOne = {
  material: async (scope, id, { entry }) => cameOf(id, await addMaterial(scope, id, entry)),
  catalogued: async (scope, id, { key }) => {
    const picked = catalogued(key);
    if (picked === null) return { id, faults: [{ path: "key", code: "not-there" }] };
    return cameOf(id, await addMaterial(scope, id, entryOf(picked)));
  },
  store: async (scope, id, { entry }) => cameOf(id, await addStore(scope, id, entry)),
  correction: async (scope, id, { observationId, patch: { reason, ...patch } }) =>
    cameOf(id, await correctObservation(scope, observationId, patch, reason), "observationId"),
  "take-back": async (scope, id, { observationId, taken }) =>
    cameOf(
      id,
      await (taken ? deleteObservation : undeleteObservation)(scope, observationId),
      "observationId",
    ),
  bought: async (scope, id, { entry, requirementId }) =>
    cameOf(id, await addLot(scope, id, entry, { allocateTo: requirementId ?? undefined })),
  draw: async (scope, id, { lotId, entry }) =>
    cameOf(id, await addStockEvent(scope, lotId, id, entry), "lotId"),
};

async function writePrices(scope: Scope, prices: readonly KindRead<"price">[]): Promise<Came[]> {
  if (prices.length === 0) return [];
  const sent = prices.map(({ id, said }) => ({ id, entry: said.entry }));
  const { rejected } = await addObservations(scope, sent);
  const refused = new Map(
    rejected.map(({ index, why, faults }) => [index, why === "faults" ? faults : USED_ID]),
  );
  return prices.map(({ id }, index) => ({ id, faults: refused.get(index) ?? null }));
}

async function writeKind<K extends EntryKind>(
  scope: Scope,
  kind: K,
  entries: readonly KindRead<K>[],
): Promise<Came[]> {
  if (kind === "price") return writePrices(scope, entries as readonly KindRead<"price">[]);
  const write = ONE_BY_ONE[kind as Exclude<EntryKind, "price">] as (
    scope: Scope,
    id: string,
    said: EntryOf<K>,
  ) => Promise<Came>;
  const came: Came[] = [];
  for (const { id, said } of entries) came.push(await write(scope, id, said));
  return came;
}

/**
 * Writes what a phone sent. Each entry stands alone: accepted when it is in the books now or was before with the same
 * content, else rejected with every reason. What cannot be reached throws, and then nothing is named: the phone keeps it all.
 */
export async function writeEntries(scope: Scope, raw: readonly unknown[]): Promise<Answered> {
  const { read, unread } = readEntries(raw);
  const came: Came[] = [...unread];
  for (const kind of KINDS_IN_ORDER)
    came.push(
      ...(await writeKind(
        scope,
        kind,
        read.filter((one) => one.kind === kind),
      )),
    );
  return {
    accepted: came.filter(({ faults }) => faults === null).map(({ id }) => id),
    rejected: came.flatMap(({ id, faults }) => (faults === null ? [] : [{ id, errors: faults.map(spoken) }])),
  };
}
