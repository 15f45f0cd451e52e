import "server-only";
import { v7 } from "uuid";
import type { Prisma } from "./generated/client.ts";
import { houseClient } from "./house-client.ts";
import type { PersonRole } from "./sessions.ts";
import { codeHash, newCode } from "./sign-in-secret.ts";

const MINUTE = 60_000;
/** How long a code lets somebody in, in minutes. */
export const CODE_MINUTES = { invite: 7 * 24 * 60, pairing: 10 } as const;

async function make(
  kind: keyof typeof CODE_MINUTES,
  forWhom: Readonly<{ role: PersonRole } | { personId: string }>,
): Promise<string> {
  const code = newCode();
  const expiresAt = new Date(Date.now() + CODE_MINUTES[kind] * MINUTE);
  await (await houseClient()).oneTimeCode.create({
    data: { id: v7(), kind, codeHash: codeHash(code), expiresAt, ...forWhom },
  });
  return code;
}

/** A code for somebody new, who will have this role. Only its hash is kept: it is shown this once. */
export function invite(role: PersonRole): Promise<string> {
  return make("invite", { role });
}

/** A code that lets one more device in as a person, within ten minutes. */
export function pairing(personId: string): Promise<string> {
  return make("pairing", { personId });
}

export type CodeKind = "first" | "invite" | "pairing";
/** What a code was made for. */
export type CodeUse = Readonly<{ role: PersonRole | null; personId: string | null }>;

/** Uses a code up, in the transaction of what it is used for. Null when it is wrong, over, or was used: which is not told. */
export async function useUp(
  tx: Prisma.TransactionClient,
  kind: CodeKind,
  typed: string,
): Promise<CodeUse | null> {
  const [found] = await tx.$queryRaw<CodeUse[]>`UPDATE one_time_code SET used_at = now()
    WHERE code_hash = ${codeHash(typed)} AND kind = ${kind} AND used_at IS NULL AND expires_at > now()
    RETURNING role, person_id AS "personId"`;
  return found ?? null;
}
