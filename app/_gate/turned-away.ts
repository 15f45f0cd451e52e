import type { Whence } from "./whence.ts";

const READS: ReadonlySet<string> = new Set(["GET", "HEAD"]);

/** What is known of a request before it is answered. */
export type Arrival = Readonly<{ method: string; path: string; headers: Pick<Headers, "get"> }>;

/** Whether an address is of the JSON interface, or of signing in by program. */
export function isInterface(path: string): boolean {
  return path === "/api" || path.startsWith("/api/");
}

/**
 * Why a request is turned away whoever it is from, or null. A page from elsewhere that has pointed its own name here is
 * known by the Host it names; one that calls across, by its Origin and by what the browser says of its site. A link from
 * elsewhere to a screen is no harm, so reading a screen is free of the last.
 */
export function turnedAway({ method, path, headers }: Arrival, from: Whence | null): string | null {
  if (from === null) return "Only this machine may call: name it localhost or 127.0.0.1.";
  const origin = headers.get("origin");
  const ours = [from.origin, from.loopback ? from.origin.replace("http://", "https://") : from.origin];
  if (origin !== null && !ours.includes(origin)) return "A page of another origin may not call this program.";
  const site = headers.get("sec-fetch-site");
  const across = site !== null && site !== "same-origin" && site !== "none";
  if (across && (isInterface(path) || !READS.has(method)))
    return "A page of another site may not call this program.";
  return null;
}
