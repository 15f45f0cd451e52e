import { type Problem, problem } from "./problem.ts";

const LOOPBACK = /^(localhost|127\.0\.0\.1|\[::1\])(:\d{1,5})?$/i;

/**
 * Why a caller is turned away, or null. Until there is sign-in only this machine may call: a page from elsewhere that
 * has pointed its own name at 127.0.0.1 is known by the Host it names, one that posts across by its Origin.
 */
export function turnedAway(request: Request): Problem | null {
  const host = request.headers.get("host") ?? "";
  if (!LOOPBACK.test(host))
    return problem(403, "Only this machine may call: name it localhost or 127.0.0.1.");
  const origin = request.headers.get("origin");
  if (origin !== null && origin !== `http://${host}` && origin !== `https://${host}`)
    return problem(403, "A page of another origin may not call this interface.");
  const site = request.headers.get("sec-fetch-site");
  if (site !== null && site !== "same-origin" && site !== "none")
    return problem(403, "A page of another site may not call this interface.");
  return null;
}
