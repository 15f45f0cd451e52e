import { houseClient } from "../../lib/data/house-client.ts";
import { invite } from "../../lib/data/one-time-codes.ts";
import { join } from "../../lib/data/people.ts";
import type { PersonRole } from "../../lib/data/sessions.ts";
import { SESSION_COOKIE, signedToken } from "../../lib/data/sign-in-secret.ts";

export const PASSWORD = "four unrelated words here";
const DEVICE = { client: "127.0.0.1", device: "a test" };

/** Gives this process and every program it starts one secret, so that a session made here is known there. */
export function shareSecret(): void {
  process.env.DUNNAGE_SECRET = "a secret of the tests alone, of forty letters";
}

/** A cookie header that carries a session. */
export function sessionCookie(token: string): string {
  return `${SESSION_COOKIE}=${encodeURIComponent(signedToken(token))}`;
}

/** Somebody of this role in the database of DATABASE_URL, signed in: the cookie header of their browser. */
export async function signedInAs(role: PersonRole, name = `A ${role}`): Promise<string> {
  const code = await invite(role);
  const joined = await join("invite", DEVICE, { code, name, password: PASSWORD });
  if (!joined.ok) throw new Error(`${name} could not join: ${JSON.stringify(joined)}`);
  await forgetTries();
  return sessionCookie(joined.value);
}

/** Forgets counted tries, so that one test's do not count against the next. */
export async function forgetTries(): Promise<void> {
  await (await houseClient()).signInAttempt.deleteMany();
}
