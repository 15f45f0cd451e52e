import type { FaultCode } from "../fault.ts";

/** Why something in a file is passed over without being a mistake. */
export type SkipReason = "no-value" | "annual" | "monthly-mean" | "not-asked-for" | "too-early";

/**
 * What became of one figure of a file, or of a row that has none: exactly one of accepted, skipped, refused. row: the line
 * of a text, or the place in a list, from 1. column: its heading, or the series. text: what stands there.
 */
export type Reading<T> = Readonly<{ row: number; column: string; text: string }> &
  (
    | Readonly<{ fate: "accepted"; value: T }>
    | Readonly<{ fate: "skipped"; why: SkipReason }>
    | Readonly<{ fate: "refused"; code: FaultCode }>
  );

type At = Readonly<{ row: number; column: string; text: string }>;

/** A figure that was read. */
export function read<T>(at: At, value: T): Reading<T> {
  return { ...at, fate: "accepted", value };
}

/** Something passed over, with the reason. */
export function skipped<T>(at: At, why: SkipReason): Reading<T> {
  return { ...at, fate: "skipped", why };
}

/** Something that cannot be read, with the reason. */
export function refused<T>(at: At, code: FaultCode): Reading<T> {
  return { ...at, fate: "refused", code };
}

/** A file none of whose shapes are known: one refusal, of its first row. */
export function unknownShape<T>(text: string): Reading<T>[] {
  const first = text.trimStart().split(/[\r\n]/, 1)[0] ?? "";
  return [refused({ row: 1, column: "", text: first.slice(0, 80) }, "unknown-shape")];
}
