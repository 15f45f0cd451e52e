import "server-only";
import { PrismaPg } from "@prisma/adapter-pg";
import { UnusableDatabase, workingRole } from "./client.ts";
import { PrismaClient } from "./generated/client.ts";

const CONNECTIONS = 4;

type Kept = { url: string; client: Promise<PrismaClient> };
const kept = globalThis as typeof globalThis & { dunnageHouse?: Kept };

async function connect(url: string): Promise<PrismaClient> {
  const role = await workingRole();
  const options = ["-c app.house=on", ...(role === "none" ? [] : [`-c role=${role}`])].join(" ");
  return new PrismaClient({ adapter: new PrismaPg({ connectionString: url, max: CONNECTIONS, options }) });
}

/**
 * The client of the tables about sign-in, which belong to the house and to no workspace. Its connections work as the plain
 * role and say that they are about sign-in: no other connection sees these tables, and these see no workspace.
 */
export function houseClient(): Promise<PrismaClient> {
  const url = process.env.DATABASE_URL;
  if (!url)
    throw new UnusableDatabase("DATABASE_URL is not set: start with `npm start`, or name a PostgreSQL");
  if (kept.dunnageHouse?.url !== url) {
    const client = connect(url).catch((error: unknown) => {
      kept.dunnageHouse = undefined;
      throw error;
    });
    kept.dunnageHouse = { url, client };
  }
  return kept.dunnageHouse.client;
}

/** Closes the connections about sign-in; for tests that end. */
export async function disconnectHouse(): Promise<void> {
  const held = kept.dunnageHouse;
  kept.dunnageHouse = undefined;
  await (await held?.client)?.$disconnect();
}
