import "server-only";
import { v7 } from "uuid";
import type { Prisma } from "./generated/client.ts";
import { houseClient } from "./house-client.ts";
import { newToken } from "./sign-in-secret.ts";

export type PersonRole = "owner" | "crew" | "reader";
/** Somebody who has signed in. */
export type SignedIn = Readonly<{ id: string; name: string; role: PersonRole; sessionId: string }>;
/** Where a session was begun. */
export type Device = Readonly<{ client: string; device: string | null }>;

const DAYS = 90;
const DAY = 86_400_000;
/** How long a session lasts, in seconds. It is not prolonged: after that the person signs in again. */
export const SESSION_SECONDS = (DAYS * DAY) / 1000;

/** Whether sign-in is asked for, and whose session a token is, in one look. A session that is revoked or over is nobody's. */
export async function doorState(
  token: string | null,
): Promise<Readonly<{ asksSignIn: boolean; person: SignedIn | null }>> {
  const client = await houseClient();
  const [found] = await client.$queryRaw<
    { asks: boolean; id: string | null; name: string; role: PersonRole; session: string }[]
  >`SELECT h.asks_sign_in AS asks, p.id, p.name, p.role, s.id AS session FROM house h
      LEFT JOIN person_session s ON s.token = ${token} AND s.expires_at > now()
      LEFT JOIN person p ON p.id = s.person_id`;
  if (found === undefined) return { asksSignIn: true, person: null };
  const { asks, id, name, role, session } = found;
  return { asksSignIn: asks, person: id === null ? null : { id, name, role, sessionId: session } };
}

/** Asks for sign-in on this computer too, or no longer. */
export async function askForSignIn(asks: boolean): Promise<void> {
  await (await houseClient()).house.updateMany({ data: { asksSignIn: asks } });
}

/** Begins a session of a person; the answer is its token. */
export async function beginSession(
  tx: Prisma.TransactionClient,
  personId: string,
  { client, device }: Device,
): Promise<string> {
  const token = newToken();
  const expiresAt = new Date(Date.now() + SESSION_SECONDS * 1000);
  await tx.personSession.create({
    data: {
      id: v7(),
      token,
      personId,
      expiresAt,
      clientAddress: client,
      device: device?.slice(0, 300) ?? null,
    },
  });
  return token;
}

export type Session = Readonly<{
  id: string;
  personName: string;
  since: Date;
  device: string | null;
  client: string | null;
}>;

/** The sessions that still let somebody in, the newest first: of one person, or with null of all. */
export async function sessionsOf(personId: string | null): Promise<Session[]> {
  const found = await (await houseClient()).personSession.findMany({
    where: { expiresAt: { gt: new Date() }, ...(personId === null ? {} : { personId }) },
    include: { person: { select: { name: true } } },
    orderBy: { createdAt: "desc" },
    take: 500,
  });
  return found.map((row) => ({
    id: row.id,
    personName: row.person.name,
    since: row.createdAt,
    device: row.device,
    client: row.clientAddress,
  }));
}

/** Ends a session at once; with a person given, only one of theirs. Whether there was one. */
export async function revokeSession(id: string, personId: string | null): Promise<boolean> {
  const where = { id, ...(personId === null ? {} : { personId }) };
  return (await (await houseClient()).personSession.deleteMany({ where })).count > 0;
}
