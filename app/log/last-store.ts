import { cookies } from "next/headers";

const COOKIE = "dunnage-store";
const A_YEAR = 31_536_000;

/** The store a price was last logged at in this browser; undefined before the first. */
export async function lastStore(): Promise<string | undefined> {
  return (await cookies()).get(COOKIE)?.value;
}

/** Remembers the store for the next price. For server actions only. */
export async function rememberStore(id: string): Promise<void> {
  (await cookies()).set(COOKIE, id, { sameSite: "lax", path: "/", maxAge: A_YEAR });
}
