import "server-only";
import { cookies, headers } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import { type Caller, callerOf } from "./caller-of.ts";

/** Who asks for this page, or does this action. Once per request. */
export const caller = cache(async (): Promise<Caller | null> => {
  const jar = await cookies();
  return callerOf(await headers(), (name) => jar.get(name)?.value);
});

/** The same, for what needs somebody: nobody is sent to sign in. */
export async function callerInside(): Promise<Caller> {
  const who = await caller();
  if (who === null || who.role === "nobody") redirect("/sign-in");
  return who;
}
