import "server-only";
import { hashPassword } from "better-auth/crypto";
import { v7 } from "uuid";
import type { Written } from "../fault.ts";
import { CODE_LIMIT, mayTry } from "./attempts.ts";
import { houseClient } from "./house-client.ts";
import { isDuplicate, isRefused } from "./house-errors.ts";
import { type CodeKind, useUp } from "./one-time-codes.ts";
import type { PersonEntry } from "./person-entry.ts";
import { beginSession, type Device, type PersonRole } from "./sessions.ts";
import { signInAddress } from "./sign-in-secret.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

export type Person = Readonly<{ id: string; name: string; role: PersonRole; since: Date; passkeys: number }>;

/** Everybody who may come in, by name. */
export async function people(): Promise<Person[]> {
  const found = await (await houseClient()).person.findMany({
    include: { _count: { select: { passkeys: true } } },
    orderBy: { name: "asc" },
  });
  return found.map(({ id, name, role, createdAt, _count }) => ({
    id,
    name,
    role: role === "owner" || role === "crew" ? role : "reader", // an unknown role may least
    since: createdAt,
    passkeys: _count.passkeys,
  }));
}

/** Whether the house has an owner yet. */
export async function hasOwner(): Promise<boolean> {
  return (await (await houseClient()).person.count({ where: { role: "owner" } })) > 0;
}

/**
 * Somebody new by a code that was made for it: the first owner's, or an invitation. The code is used up, the person made
 * and their first session begun in one transaction; the answer is the session's token. A wrong code counts as a try.
 */
export async function join(
  kind: Exclude<CodeKind, "pairing">,
  device: Device,
  { code, name, password }: PersonEntry,
): Promise<Written<string>> {
  if (!(await mayTry("code", device.client, CODE_LIMIT))) return refused([fault("code", "too-many-tries")]);
  const [client, passwordHash] = [await houseClient(), await hashPassword(password)];
  try {
    const token = await client.$transaction(async (tx) => {
      const use = await useUp(tx, kind, code);
      if (use === null || use.role === null) return null;
      const id = v7();
      await tx.person.create({ data: { id, name, role: use.role, signInAddress: signInAddress(name) } });
      await tx.personCredential.create({
        data: { id: v7(), personId: id, accountId: id, providerId: "credential", passwordHash },
      });
      return beginSession(tx, id, device);
    });
    return token === null ? refused([fault("code", "code-void")]) : accepted(token);
  } catch (error) {
    if (isDuplicate(error)) return refused([fault("name", "name-taken")]);
    throw error;
  }
}

/** Lets one more device of a person in by a pairing code; the answer is the session's token. */
export async function pair(device: Device, code: string): Promise<Written<string>> {
  if (!(await mayTry("code", device.client, CODE_LIMIT))) return refused([fault("code", "too-many-tries")]);
  const token = await (await houseClient()).$transaction(async (tx) => {
    const use = await useUp(tx, "pairing", code);
    return use?.personId == null ? null : beginSession(tx, use.personId, device);
  });
  return token === null ? refused([fault("code", "code-void")]) : accepted(token);
}

/** Gives a person another role, at once for every session of theirs. The last owner stays one. */
export async function changeRole(id: string, role: PersonRole): Promise<Written<null>> {
  return unlessLastOwner(async () => {
    const { count } = await (await houseClient()).person.updateMany({ where: { id }, data: { role } });
    return count > 0;
  });
}

/** Takes a person out, with their sessions, passkeys and codes. What they logged stays under their name. */
export async function removePerson(id: string): Promise<Written<null>> {
  return unlessLastOwner(async () => {
    return (await (await houseClient()).person.deleteMany({ where: { id } })).count > 0;
  });
}

async function unlessLastOwner(work: () => Promise<boolean>): Promise<Written<null>> {
  try {
    return (await work()) ? accepted(null) : NOT_THERE;
  } catch (error) {
    if (isRefused(error)) return refused([fault("role", "last-owner")]);
    throw error;
  }
}

export type Passkey = Readonly<{ id: string; name: string | null; since: Date | null }>;

/** The passkeys of a person. */
export async function passkeysOf(personId: string): Promise<Passkey[]> {
  const found = await (await houseClient()).personPasskey.findMany({
    where: { personId },
    orderBy: { createdAt: "asc" },
  });
  return found.map(({ id, name, createdAt }) => ({ id, name, since: createdAt }));
}

/** Takes a passkey of a person away. */
export async function removePasskey(id: string, personId: string): Promise<void> {
  await (await houseClient()).personPasskey.deleteMany({ where: { id, personId } });
}
