import type { NextRequest } from "next/server";
import { isInterface, turnedAway } from "./app/_gate/turned-away.ts";
import { problem, problemResponse } from "./app/api/v1/_answers/problem.ts";

/** Every request passes here first: who may not call is turned away before anything is read. */
export function proxy(request: NextRequest): Response | undefined {
  const path = request.nextUrl.pathname;
  const why = turnedAway({ method: request.method, path, headers: request.headers });
  if (why === null) return undefined;
  return isInterface(path)
    ? problemResponse(problem(403, why))
    : new Response(why, { status: 403, headers: { "content-type": "text/plain; charset=utf-8" } });
}
