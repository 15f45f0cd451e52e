import { createHash } from "node:crypto";

/** A short text that differs when a value differs: a form carries the one of what it was drawn from. */
export function fingerprint(value: unknown): string {
  return createHash("sha256").update(JSON.stringify(value)).digest("base64url").slice(0, 22);
}
