import "server-only";
import { doorState } from "../../lib/data/sessions.ts";
import { SESSION_COOKIE, tokenOf } from "../../lib/data/sign-in-secret.ts";
import type { Role } from "./roles.ts";
import { opennessOf, type Whence, whence } from "./whence.ts";
import { WORKSPACE_COOKIE } from "./workspace-cookie.ts";

export type CallerPerson = Readonly<{ id: string; name: string; sessionId: string }>;
/** Who is calling, from where, and whether this computer is asked for sign-in too. */
export type Caller = Readonly<{ role: Role; person: CallerPerson | null; from: Whence; asksSignIn: boolean }>;

/** How the house is open, as the launcher said. */
export const openness = () => opennessOf(process.env);

/**
 * Who a request comes from; null when it calls us by a name that is not ours. Believes nothing of the request but the signed
 * cookie, the name called, and what only our own front can say.
 */
export async function callerOf(
  headers: Pick<Headers, "get">,
  cookie: (name: string) => string | undefined,
): Promise<Caller | null> {
  const open = openness();
  const from = whence(headers, open);
  if (from === null) return null;
  const { asksSignIn, person } = await doorState(tokenOf(cookie(SESSION_COOKIE)));
  const asks = asksSignIn || open.mode !== null;
  if (person !== null) {
    const { role, ...who } = person;
    return { role, person: who, from, asksSignIn: asks };
  }
  const role = from.loopback ? unknownHere(asks, cookie(WORKSPACE_COOKIE) === "demo") : "nobody";
  return { role, person: null, from, asksSignIn: asks };
}

function unknownHere(asks: boolean, demo: boolean): Role {
  if (!asks) return "here";
  return demo ? "demo" : "nobody";
}
