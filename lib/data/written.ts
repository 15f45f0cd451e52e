import "server-only";
import type { Fault, FaultCode, Written } from "../fault.ts";

/** The answers of a write. `repeated`: nothing was done, because it had been done before. */
export function accepted<T>(value: T): Written<T> {
  return { ok: true, value, repeated: false };
}

/** The answer to a create that arrived before with the same content. */
export function repeated<T>(value: T): Written<T> {
  return { ok: true, value, repeated: true };
}

/** The answer to a create whose id is taken by something else: what is stored comes back. */
export function conflict<T>(stored: T): Written<T> {
  return { ok: false, why: "conflict", stored };
}

/** The answer to an entry with faults: all of them, none hidden by the first. */
export function refused(
  faults: readonly Fault[],
): Readonly<{ ok: false; why: "faults"; faults: readonly Fault[] }> {
  return { ok: false, why: "faults", faults };
}

/** One fault: the field's path, its code, and the values its words need. */
export function fault(path: string, code: FaultCode, values?: Readonly<Record<string, string>>): Fault {
  return values === undefined ? { path, code } : { path, code, values };
}

export const NOT_THERE = { ok: false, why: "not-there" } as const;
