import { id as idField } from "../../lib/entry-fields.ts";
import { type Fault, faultsOf } from "../../lib/fault.ts";
import { ENTRY_KINDS, type EntryKind, type EntryOf } from "./entry-kinds.ts";

/** An entry of one kind, read: its id and what it says. */
export type KindRead<K extends EntryKind> = Readonly<{ kind: K; id: string; said: EntryOf<K> }>;
type Unread = Readonly<{ id: string; faults: readonly Fault[] }>;

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Reads what a phone sent, each entry by itself; with a fault, all of them are named. An entry under an id that cannot be
 * told apart is answered under the text it came with.
 */
export function readEntries(raw: readonly unknown[]): {
  read: KindRead<EntryKind>[];
  unread: Unread[];
} {
  const read: KindRead<EntryKind>[] = [];
  const unread: Unread[] = [];
  for (const one of raw) {
    const { id: given, kind, ...rest } = isRecord(one) ? one : {};
    const name = typeof given === "string" ? given : "";
    const id = idField().safeParse(given);
    if (!id.success) unread.push({ id: name, faults: faultsOf(id.error).map((f) => ({ ...f, path: "id" })) });
    else if (typeof kind !== "string" || !Object.hasOwn(ENTRY_KINDS, kind))
      unread.push({ id: name, faults: [{ path: "kind", code: "unknown-choice" }] });
    else {
      const known = kind as EntryKind;
      const said = ENTRY_KINDS[known].safeParse(rest);
      if (said.success) read.push({ kind: known, id: id.data, said: said.data });
      else unread.push({ id: name, faults: faultsOf(said.error) });
    }
  }
  return { read, unread };
}
