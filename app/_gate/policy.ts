import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const known = new Map<string, string | null>();

// A page made at build time cannot carry a nonce: its inline scripts are known by their hashes.
function hashesOf(path: string): string | null {
  const held = known.get(path);
  if (held !== undefined) return held;
  const file = /^(\/[a-z0-9-]+)+$/.test(path) ? join(process.cwd(), ".next/server/app", `${path}.html`) : "";
  let hashes: string | null = null;
  if (file !== "" && existsSync(file)) {
    const scripts = readFileSync(file, "utf8").matchAll(/<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g);
    const each = [...scripts].map(
      ([, text]) =>
        `'sha256-${createHash("sha256")
          .update(text ?? "")
          .digest("base64")}'`,
    );
    hashes = [...new Set(each)].join(" ");
  }
  if (known.size > 1000) known.clear(); // addresses are the callers' to make up
  known.set(path, hashes);
  return hashes;
}

/**
 * The content security policy of a page: scripts run when they carry the nonce of this answer, or are those of a page made
 * at build time. Inline styles stay allowed: lengths of drawings are written as style attributes.
 */
export function contentPolicy(path: string, nonce: string): string {
  const hashes = hashesOf(path);
  const scripts = hashes === null ? `'nonce-${nonce}' 'strict-dynamic'` : `'self' ${hashes}`;
  const dev = process.env.NODE_ENV === "development" ? " 'unsafe-eval'" : "";
  return [
    "default-src 'self'",
    `script-src ${scripts}${dev}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}
