import "server-only";
import { inWorkspace, type Scope } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row } from "./rows.ts";

/**
 * Whether an entry this program once acknowledged is still in the books, deleted ones too. It is not after the books were
 * put back to an earlier state: then the phone offers again what it had sent since.
 */
export function isEntryKnown(scope: Scope, id: string): Promise<boolean> {
  return inWorkspace(scope, async (tx) => {
    const found = await row<{ known: boolean }>(
      tx,
      Prisma.sql`SELECT EXISTS (SELECT 1 FROM observation WHERE id = ${id}::uuid)
        OR EXISTS (SELECT 1 FROM lot WHERE id = ${id}::uuid)
        OR EXISTS (SELECT 1 FROM material WHERE id = ${id}::uuid)
        OR EXISTS (SELECT 1 FROM store WHERE id = ${id}::uuid) AS known`,
    );
    return found?.known ?? false;
  });
}
