import { cookies } from "next/headers";
import { WORKSPACE_COOKIE as COOKIE } from "../_gate/workspace-cookie.ts";

/** Whether this browser is looking at the demo instead of the owner's own workspace. */
export async function looksAtDemo(): Promise<boolean> {
  return (await cookies()).get(COOKIE)?.value === "demo";
}

/** From now on this browser looks at the demo. For server actions only. */
export async function lookAtDemo(): Promise<void> {
  (await cookies()).set(COOKIE, "demo", { httpOnly: true, sameSite: "lax", path: "/" });
}

/** From now on this browser looks at the owner's own workspace. For server actions only. */
export async function lookAtOwn(): Promise<void> {
  (await cookies()).delete(COOKIE);
}
