import "server-only";
import type { Fault, FaultCode, Written } from "../fault.ts";

/** The answers of a write. `repeated`: nothing was done, because it had been done before. */
export function accepted<T>(value: T): Written<T> {
  return { ok: true, value, repeated: false };
}

export function repeated<T>(value: T): Written<T> {
  return { ok: true, value, repeated: true };
}

export function conflict<T>(stored: T): Written<T> {
  return { ok: false, why: "conflict", stored };
}

export function refused(
  faults: readonly Fault[],
): Readonly<{ ok: false; why: "faults"; faults: readonly Fault[] }> {
  return { ok: false, why: "faults", faults };
}

export function fault(path: string, code: FaultCode, values?: Readonly<Record<string, string>>): Fault {
  return values === undefined ? { path, code } : { path, code, values };
}

export const NOT_THERE = { ok: false, why: "not-there" } as const;
