import { cookies } from "next/headers";
import { CLIENT_HEADER, houseAuth } from "../../../../lib/data/house-auth.ts";
import { callerOf } from "../../../_gate/caller-of.ts";
import { problem, problemResponse } from "../../v1/_answers/problem.ts";

/** Signing in by program and by passkey: only what the table lets through the gate comes here. */
async function answer(request: Request): Promise<Response> {
  const jar = await cookies();
  const who = await callerOf(request.headers, (name) => jar.get(name)?.value);
  if (who === null) return problemResponse(problem(403, "This name is not one of the program's own."));
  const { pathname, search } = new URL(request.url);
  const headers = new Headers(request.headers);
  headers.set(CLIENT_HEADER, who.from.client);
  const body = request.method === "GET" ? null : await request.arrayBuffer();
  const asked = new Request(`${who.from.origin}${pathname}${search}`, {
    method: request.method,
    headers,
    body,
  });
  return (await houseAuth(who.from.origin)).handler(asked);
}

export { answer as GET, answer as POST };
