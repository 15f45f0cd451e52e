const LOOPBACK = /^(localhost|127\.0\.0\.1|\[::1\])(:\d{1,5})?$/i;
const READS: ReadonlySet<string> = new Set(["GET", "HEAD"]);

/** What is known of a request before it is answered. */
export type Arrival = Readonly<{ method: string; path: string; headers: Pick<Headers, "get"> }>;

/** Whether an address is of the JSON interface. */
export function isInterface(path: string): boolean {
  return path === "/api" || path.startsWith("/api/");
}

/**
 * Why a request is turned away, or null. Until there is sign-in only this machine may call. A page from elsewhere that
 * has pointed its own name at 127.0.0.1 is known by the Host it names; one that calls across, by its Origin and by what
 * the browser says of its site. A link from elsewhere to a screen is no harm, so reading a screen is free of the last.
 */
export function turnedAway({ method, path, headers }: Arrival): string | null {
  const host = headers.get("host") ?? "";
  if (!LOOPBACK.test(host)) return "Only this machine may call: name it localhost or 127.0.0.1.";
  const origin = headers.get("origin");
  if (origin !== null && origin !== `http://${host}` && origin !== `https://${host}`)
    return "A page of another origin may not call this program.";
  const site = headers.get("sec-fetch-site");
  const across = site !== null && site !== "same-origin" && site !== "none";
  if (across && (isInterface(path) || !READS.has(method)))
    return "A page of another site may not call this program.";
  return null;
}
