import type { Roles } from "./roles.ts";

/** Which workspace a row reaches: the one this browser looks at, the house's own, or none. */
export type Reach = "looked-at" | "own" | "none";

/** Who may come to an address. writes: every method but GET, HEAD and OPTIONS. */
export type Row = Readonly<{ path: string; reads: Roles; writes: Roles; reach: Reach }>;

/** A screen. What is posted to it are server actions, and each of those has its own line in actions-table.ts. */
export function screen(path: string, reads: Roles, reach: Reach = "looked-at"): Row {
  return { path, reads, writes: reads, reach };
}

/** A file that is made of data and only read. */
export function reading(path: string, reads: Roles, reach: Reach = "looked-at"): Row {
  return { path, reads, writes: [], reach };
}

/** An address of the JSON interface, below /api/v1. */
export function service(path: string, reads: Roles, writes: Roles): Row {
  return { path: `/api/v1${path}`, reads, writes, reach: "own" };
}

/** An address of signing in. */
export function signing(path: string, reads: Roles, writes: Roles): Row {
  return { path, reads, writes, reach: "none" };
}

function patternOf(path: string): RegExp {
  const parts = path.split("/").map((part) => {
    if (part.startsWith("[...")) return ".+";
    return part.startsWith("[") ? "[^/]+" : part.replaceAll(/[.*+?^${}()|\\]/g, "\\$&");
  });
  return new RegExp(`^${parts.join("/")}$`);
}

// A word in an address goes before a part that may be anything, as Next has it.
function vagueness(path: string): string {
  return path
    .split("/")
    .map((part) => (part.startsWith("[...") ? "2" : part.startsWith("[") ? "1" : "0"))
    .join("");
}

/** Finds the row of an address among rows: the one with the plainest words. */
export function finder(rows: readonly Row[]): (path: string) => Row | null {
  const known = rows
    .map((row) => ({ row, pattern: patternOf(row.path), vague: vagueness(row.path) }))
    .sort((one, other) => (one.vague < other.vague ? -1 : one.vague > other.vague ? 1 : 0));
  return (path) => known.find(({ pattern }) => pattern.test(path))?.row ?? null;
}
