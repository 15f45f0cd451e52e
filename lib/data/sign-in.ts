import "server-only";
import { CLIENT_HEADER, houseAuth } from "./house-auth.ts";
import type { Device } from "./sessions.ts";
import { signInAddress } from "./sign-in-secret.ts";

/** What came of a name and a password: the cookies of a session, or why not. */
export type Entered =
  | Readonly<{ ok: true; cookies: readonly string[] }>
  | Readonly<{ ok: false; why: "wrong" | "too-many" }>;

/** Signs somebody in by name and password, at an address the gate has let through. Wrong tries are counted in the database. */
export async function enter(
  origin: string,
  device: Device,
  name: string,
  password: string,
): Promise<Entered> {
  const request = new Request(`${origin}/api/auth/sign-in/email`, {
    method: "POST",
    headers: {
      "content-type": "application/json",
      origin,
      [CLIENT_HEADER]: device.client,
      "user-agent": device.device?.slice(0, 300) ?? "",
    },
    body: JSON.stringify({ email: signInAddress(name), password }),
  });
  const response = await (await houseAuth(origin)).handler(request);
  if (response.ok) return { ok: true, cookies: response.headers.getSetCookie() };
  if (response.status === 429) return { ok: false, why: "too-many" };
  if (response.status < 500) return { ok: false, why: "wrong" };
  throw new Error(`signing in failed with status ${response.status}`);
}
