import "server-only";
import { codesOf } from "./database-errors.ts";

/** Whether the database refused a write because something like it is there. */
export function isDuplicate(error: unknown): boolean {
  return [...codesOf(error)].some((code) => code === "23505" || code === "P2002");
}

/** Whether the database refused a write by one of its CHECKs or triggers. */
export function isRefused(error: unknown): boolean {
  return [...codesOf(error)].includes("23514");
}
