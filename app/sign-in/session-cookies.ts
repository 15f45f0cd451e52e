import "server-only";
import { cookies, headers } from "next/headers";
import { SESSION_SECONDS } from "../../lib/data/sessions.ts";
import { SESSION_COOKIE, signedToken } from "../../lib/data/sign-in-secret.ts";
import type { Caller } from "../_gate/caller-of.ts";

/** What is noted of the device a session begins on. */
export async function deviceOf({ from }: Caller) {
  return { client: from.client, device: (await headers()).get("user-agent") };
}

/** Puts a session into this browser. For server actions only. */
export async function keepSession(token: string, { from }: Caller): Promise<void> {
  await keepSigned(signedToken(token), from.origin);
}

/** The same for the cookies sign-in by password has made. */
export async function keepCookies(made: readonly string[], { from }: Caller): Promise<void> {
  const start = `${SESSION_COOKIE}=`;
  const cookie = made.find((one) => one.startsWith(start));
  if (cookie === undefined) throw new Error("signing in gave no session");
  await keepSigned(decodeURIComponent(cookie.slice(start.length).split(";")[0] ?? ""), from.origin);
}

async function keepSigned(value: string, origin: string): Promise<void> {
  (await cookies()).set(SESSION_COOKIE, value, {
    httpOnly: true,
    sameSite: "lax",
    path: "/",
    secure: origin.startsWith("https://"),
    maxAge: SESSION_SECONDS,
  });
}

/** Takes the session out of this browser. For server actions only. */
export async function dropSession(): Promise<void> {
  (await cookies()).delete(SESSION_COOKIE);
}
