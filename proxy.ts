import { randomBytes } from "node:crypto";
import { type NextRequest, NextResponse } from "next/server";
import { isDatabaseDown } from "./app/_forms/database-down.ts";
import { mayAsk, rowOf } from "./app/_gate/access.ts";
import { type Caller, callerOf, openness } from "./app/_gate/caller-of.ts";
import { contentPolicy } from "./app/_gate/policy.ts";
import { isInterface, turnedAway } from "./app/_gate/turned-away.ts";
import { whence } from "./app/_gate/whence.ts";
import { NO_SUCH_ADDRESS, problem, problemResponse, SIGN_IN_FIRST } from "./app/api/v1/_answers/problem.ts";

/** An address that is never there: Next shows its own page for that. */
const NOTHING = "/not-there";

/** Every request passes here first: who may not call is turned away before anything is read. */
export async function proxy(request: NextRequest): Promise<Response> {
  const path = request.nextUrl.pathname;
  const from = whence(request.headers, openness());
  const why = turnedAway({ method: request.method, path, headers: request.headers }, from);
  if (why !== null) return refusal(path, 403, why);
  if (rowOf(path)?.reach === "none" && mayAsk("nobody", request.method, path)) return onward(request);
  const who = await askedBy(request);
  if (who === "unknown") return onward(request);
  if (who !== null && mayAsk(who.role, request.method, path)) return onward(request);
  return denied(request, path, who);
}

// Without its database the program has nothing to show, and says that itself. What it could still do asks again who calls.
async function askedBy(request: NextRequest): Promise<Caller | null | "unknown"> {
  try {
    return await callerOf(request.headers, (name) => request.cookies.get(name)?.value);
  } catch (error) {
    if (isDatabaseDown(error)) return "unknown";
    throw error;
  }
}

function denied(request: NextRequest, path: string, who: Caller | null): Response {
  const out = who === null || who.role === "nobody";
  if (isInterface(path)) {
    if (out) return problemResponse(SIGN_IN_FIRST);
    return rowOf(path) === null
      ? problemResponse(NO_SUCH_ADDRESS)
      : refusal(path, 403, "Your role does not let you do this.");
  }
  // A form sent by somebody signed out meanwhile gets its answer from the action, which keeps what was typed.
  if (request.method === "POST" && request.headers.has("next-action") && rowOf(path) !== null)
    return onward(request);
  if (request.method !== "GET" && request.method !== "HEAD")
    return refusal(path, out ? 401 : 403, out ? "Sign in first." : "Your role does not let you do this.");
  if (out) return NextResponse.redirect(addressed(request, `/sign-in?to=${encodeURIComponent(path)}`), 303);
  // Next rewrites addresses of 127.0.0.1 as if they were another host's, so what is denied is sent on instead.
  if (path === NOTHING) return onward(request);
  if (rowOf(path) === null) return NextResponse.redirect(addressed(request, NOTHING), 303);
  if (path === "/" && who.role === "reader")
    return NextResponse.redirect(addressed(request, "/savings"), 303);
  return NextResponse.redirect(addressed(request, "/sign-in/not-yours"), 303);
}

// The address as the browser knows it: Next's own may be that of this computer.
function addressed(request: NextRequest, to: string): string {
  return `${whence(request.headers, openness())?.origin ?? ""}${to}`;
}

function refusal(path: string, status: 401 | 403, why: string): Response {
  return isInterface(path)
    ? problemResponse(problem(status, why))
    : new Response(why, { status, headers: { "content-type": "text/plain; charset=utf-8" } });
}

function onward(request: NextRequest): Response {
  const policy = contentPolicy(request.nextUrl.pathname, randomBytes(16).toString("base64"));
  const headers = new Headers(request.headers);
  headers.set("content-security-policy", policy);
  const answer = NextResponse.next({ request: { headers } });
  answer.headers.set("content-security-policy", policy);
  if (whence(request.headers, openness())?.origin.startsWith("https://"))
    answer.headers.set("strict-transport-security", "max-age=2592000");
  return answer;
}
