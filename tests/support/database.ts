import { inject } from "vitest";
import { copyOf } from "./test-server.ts";

/**
 * A new, empty, migrated database; the answer is its address.
 * DATABASE_URL and DUNNAGE_ROLE are set for it, so call it before lib/data/client is imported:
 *     await freshDatabase();
 *     const { addStore } = await import("../../lib/data/stores.ts");
 */
export async function freshDatabase(): Promise<string> {
  const template = inject("template");
  process.env.DUNNAGE_ROLE = template.role;
  process.env.DATABASE_URL = await copyOf(template);
  return process.env.DATABASE_URL;
}
